/** What the instructor's screen may say. */
import { randomInt } from 'node:crypto';
import {
  type ClassEvent,
  type ClassState,
  type GivenFromSeat,
  type HostMessage,
  type InstructorMessage,
  isRight,
  reportOf,
  sealedList,
} from '../../core/classroom';
import type { Desk, Line } from './desk';

type Said = Exclude<InstructorMessage, { type: 'instruct' }>;

const SEEDS = 2 ** 31;

export async function hearInstructor(desk: Desk, line: Line, said: Said): Promise<void> {
  switch (said.type) {
    case 'ping':
      line.say({ type: 'pong' });
      return;
    case 'draw':
      // The seed stays here: whoever knew it could draw the same questions with their answers.
      await desk.setDraft(desk.stock.draw(said.wish, randomInt(SEEDS)));
      return done(desk, line, said.id);
    case 'drop':
      await desk.setDraft(desk.draft()?.filter((_, i) => i !== said.number) ?? null);
      return done(desk, line, said.id);
    case 'shift':
      await desk.setDraft(shifted(desk.draft() ?? [], said.number, said.by));
      return done(desk, line, said.id);
    case 'begin': {
      const draft = desk.draft();
      if (draft === null || draft.length === 0) return refuse(line, said.id, 'no-question');
      const event: ClassEvent = {
        type: 'session',
        id: `s-${Date.now().toString(36)}-${randomInt(SEEDS).toString(36)}`,
        at_ms: Date.now(),
        questions: sealedList(draft),
      };
      if (await put(desk, line, said.id, event)) await desk.setDraft(null);
      return;
    }
    case 'keys':
      line.say({
        type: 'keys',
        id: said.id,
        items:
          desk.store.state().session?.questions.map(({ item }) => item) ??
          sealedList(desk.draft() ?? []).map(({ item }) => item),
      });
      return;
    case 'report': {
      const now = desk.store.state();
      const state =
        said.session === null || said.session === now.session?.id ? now : desk.store.pastState(said.session);
      const report = state === null ? null : reportMessage(said.id, state);
      if (report === null) return refuse(line, said.id, 'no-session');
      line.say(report);
      return;
    }
    case 'settings':
      await put(desk, line, said.id, { type: 'settings', settings: said.settings });
      return;
    case 'move':
      await put(desk, line, said.id, { type: 'move', move: said.move });
      return;
    case 'free':
      await put(desk, line, said.id, { type: 'free', seat: said.seat });
      return;
    case 'hands':
      await put(desk, line, said.id, { type: 'hands', question: said.question, hands: said.hands });
      return;
    case 'paper': {
      const { question, seat, entry } = said;
      await put(desk, line, said.id, { type: 'paper', question, seat, entry });
      return;
    }
    case 'follow':
      await put(desk, line, said.id, { type: 'follow', follow: said.follow });
      return;
  }
}

async function put(desk: Desk, line: Line, id: string, event: ClassEvent): Promise<boolean> {
  const verdict = await desk.put(event);
  if (verdict.verdict === 'refuse') line.say({ type: 'refused', id, why: { key: verdict.why } });
  else line.say({ type: 'done', id });
  return verdict.verdict === 'take';
}

function done(desk: Desk, line: Line, id: string): void {
  line.say({ type: 'done', id });
  desk.turnPage();
}

const refuse = (line: Line, id: string, why: string): void =>
  line.say({ type: 'refused', id, why: { key: `class.refused.${why}` } });

function shifted<T>(list: readonly T[], at: number, by: -1 | 1): readonly T[] {
  const to = at + by;
  if (at >= list.length || to < 0 || to >= list.length) return list;
  const out = [...list];
  [out[at], out[to]] = [out[to]!, out[at]!];
  return out;
}

function reportMessage(id: string, state: ClassState): Extract<HostMessage, { type: 'report' }> | null {
  const { session, settings } = state;
  if (session === null) return null;
  const given = session.asked.map((asked, i) =>
    Object.fromEntries(
      Object.entries(asked.answers).map(([seat, each]): [string, GivenFromSeat] => [
        seat,
        {
          answer: each.answer,
          certainty: each.via === 'phone' ? each.certainty : null,
          right: isRight(session.questions[i]!.item, each),
        },
      ]),
    ),
  );
  return {
    type: 'report',
    id,
    session: session.id,
    at_ms: session.at_ms,
    settings,
    report: reportOf(state),
    given,
  };
}
