/**
 * A job's words in further languages: one file a language, `jobs/texts/<language>.yaml`, from the English text to the
 * other, so that what several jobs say is translated once and a changed English text asks for its translation again.
 */
import { z } from 'zod';
import { type Fault, fail, message, ok, printFound, type Result } from '../kernel';
import { placeIn, readYaml, type SourceFile } from '../machine';
import { type Job, jobFileSchema, type Text, textSchema } from './schema';

const textsSchema = z.strictObject({
  language: z.string().regex(/^[a-z]{2}(-[A-Z]{2})?$/),
  texts: z.record(z.string(), z.string().min(1)),
});

/** Calls `visit` for every text of a job (found by the job's schema) and puts its answer in the text's place. */
function mapTexts(schema: z.core.$ZodType, value: unknown, visit: (text: Text) => Text): unknown {
  if (schema === textSchema) return visit(value as Text);
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault)
    return value === undefined ? value : mapTexts(schema.unwrap(), value, visit);
  if (schema instanceof z.ZodArray)
    return (value as readonly unknown[]).map((entry) => mapTexts(schema.element, entry, visit));
  if (schema instanceof z.ZodObject)
    return Object.fromEntries(
      Object.entries(value as object).map(([key, entry]) => [
        key,
        mapTexts(schema.shape[key] as z.core.$ZodType, entry, visit),
      ]),
    );
  if (schema instanceof z.ZodUnion) {
    const fitting = schema.options.find((option) => z.safeParse(option, value).success);
    return fitting === undefined ? value : mapTexts(fitting, value, visit);
  }
  return value;
}

/**
 * The jobs with their words in every language of `files` beside the English ones. Faults: an English text of a job that
 * a file lacks, and a text in a file that no job says.
 */
export function withTexts(jobs: readonly Job[], files: readonly SourceFile[]): Result<readonly Job[]> {
  const faults: Fault[] = [];
  let out = jobs;
  for (const file of files) {
    const read = readYaml(file, textsSchema);
    if (!read.ok) {
      faults.push(...read.faults);
      continue;
    }
    const { language, texts } = read.value.data;
    const said = new Set<string>();
    out = out.map(
      (job) =>
        mapTexts(jobFileSchema, job, (text) => {
          const english = typeof text === 'string' ? text : text['en'];
          if (english === undefined) return text;
          said.add(english);
          const translated = texts[english];
          return translated === undefined
            ? text
            : { ...(typeof text === 'string' ? { en: text } : text), [language]: translated };
        }) as Job,
    );
    for (const english of said)
      if (!Object.hasOwn(texts, english))
        faults.push({
          ...placeIn(read.value, ['texts']),
          expected: message('fault.job.translation', { language }),
          found: printFound(english),
        });
    for (const english of Object.keys(texts))
      if (!said.has(english))
        faults.push({
          ...placeIn(read.value, ['texts', english]),
          expected: message('fault.job.said'),
          found: printFound(english),
        });
  }
  return faults.length > 0 ? fail(faults) : ok(out);
}
