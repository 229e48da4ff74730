/** Messages of the core as English sentences, for the command line. */
import type { Message, MessageParam } from '../../core/kernel';
import english from '../../words/en';

/** The sentence of a message; a key that has no text is printed as itself with its parameters. */
export function say(message: Message): string {
  const template = english[message.key];
  if (template === undefined) {
    return message.params === undefined ? message.key : `${message.key} ${JSON.stringify(message.params)}`;
  }
  return template.replace(/\{\{\s*([\w-]+)\s*\}\}/g, (whole, name: string) => {
    const value = message.params?.[name];
    return value === undefined ? whole : sayParam(value);
  });
}

function sayParam(value: MessageParam): string {
  if (typeof value === 'number') return String(Number(value.toPrecision(6)));
  if (typeof value === 'string' || typeof value === 'boolean') return String(value);
  if (Array.isArray(value)) return value.map((each: string | Message) => sayParam(each)).join(', ');
  return say(value as Message);
}
