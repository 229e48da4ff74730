/** Slow state of the class: what the host of this page said last, and what is on its way to it. */
import type {
  ClassGreeting,
  HostMessage,
  HostPage,
  LearnerView,
  LinkStatus,
  OwnAnswer,
} from '../../core/classroom';
import type { Message } from '../../core/kernel';
import type { Item } from '../../core/quiz';

export type ClassReportMessage = Extract<HostMessage, { type: 'report' }>;

export interface ClassSlice {
  /** 'unknown': not asked yet; null: this page does not come from a class host. */
  readonly greeting: ClassGreeting | null | 'unknown';
  readonly link: LinkStatus | 'off';
  readonly role: 'nobody' | 'learner' | 'instructor';
  /** What the host refused last, in words. */
  readonly refused: Message | null;
  /** False when the browser keeps nothing: an answer that could not be sent is lost with the page. */
  readonly keeps: boolean;

  readonly view: LearnerView | null;
  /** The answer given here last to the question at hand, and whether the host has it. */
  readonly given: (Pick<OwnAnswer, 'answer' | 'certainty'> & { readonly reached: boolean }) | null;

  readonly page: HostPage | null;
  readonly report: ClassReportMessage | null;
  /** Questions with their answers, for the printed sheet. */
  readonly keys: readonly Item[] | null;
}

export const INITIAL_CLASS: ClassSlice = {
  greeting: 'unknown',
  link: 'off',
  role: 'nobody',
  refused: null,
  keeps: true,
  view: null,
  given: null,
  page: null,
  report: null,
  keys: null,
};
