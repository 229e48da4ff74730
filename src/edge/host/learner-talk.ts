/** What a phone that has joined may say. */
import { type LearnerMessage, learnerView } from '../../core/classroom';
import type { Desk, Line } from './desk';

/** Says what became of an answer: on the disk, or why not. */
export async function hearLearner(
  desk: Desk,
  learnerId: string,
  line: Line,
  said: Extract<LearnerMessage, { type: 'answer' | 'ping' }>,
): Promise<void> {
  if (said.type === 'ping') {
    line.say({ type: 'pong' });
    return;
  }
  const { id, session, question, revision, answer, certainty, kept } = said;
  if (session !== desk.store.state().session?.id) {
    line.say({ type: 'refused', id, why: { key: 'class.refused.other-session' } });
    return;
  }
  const event = { type: 'answer' as const, learner: learnerId, question, revision, answer, certainty, kept };
  const verdict = await desk.put(event);
  if (verdict.verdict === 'refuse') line.say({ type: 'refused', id, why: { key: verdict.why } });
  else line.say({ type: 'accepted', id });
}

/** Welcomes a phone whose join or token was good. */
export function welcome(desk: Desk, learnerId: string, line: Line): void {
  const view = learnerView(desk.store.state(), learnerId);
  if (view !== null) line.say({ type: 'joined', view });
}
