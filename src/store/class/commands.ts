/** Commands of the class: one connection to the host of this page, as a phone or as the instructor's screen. */
import {
  type ClassLink,
  type Follow,
  type HostMessage,
  type InstructorMessage,
  type LearnerView,
  type SeenQuestion,
  TALK_VERSION,
} from '../../core/classroom';
import type { Answer, Certainty } from '../../core/quiz';
import type { Commands } from '../commands';
import { ensureTopic } from '../lessons/commands';
import { applyStage, giveStageBack } from '../lent-stage';
import type { Ports } from '../ports';
import type { AppStore } from '../store';
import { learnerTalk } from './learner';
import { stageOfFollow, stageOfQuestion, stageSettingOf } from './stage';
import type { ClassSlice } from './state';

const KEPT_SECRET = 'drumbench.class.secret.1';

type Plain<T> = T extends (infer Each)[]
  ? readonly Plain<Each>[]
  : T extends object
    ? { readonly [Key in keyof T]: Plain<T[Key]> }
    : T;
type Distributed<T> = T extends unknown ? Plain<Omit<T, 'id'>> : never;
/** What the instructor's screen may ask of the host. */
export type HostOrder = Distributed<Extract<InstructorMessage, { id: string }>>;

export function createClassCommands(store: AppStore, ports: Ports, commands: Commands) {
  const get = (): ClassSlice => store.getState().class;
  const set = (part: Partial<ClassSlice>): void => store.setState({ class: { ...get(), ...part } });
  let link: ClassLink | null = null;
  let secret = '';
  let ids = 0;
  /** What the stage was last set for, so that a repeated view does not take it out of the person's hands. */
  let staged = '';

  const here = (): boolean => store.getState().route.place === 'class';
  /** Sets the stage for what is shown now, once for each thing that is shown. */
  function stageFor(question: SeenQuestion | null, session: string | null, follow: Follow | null): void {
    if (!here() || store.getState().document === null) return;
    const item = question?.item ?? null;
    const key = JSON.stringify(
      follow ?? [session, item === null ? null : question?.number, question?.phase === 'revealed'],
    );
    if (key === staged) return;
    staged = key;
    if (follow !== null) {
      const setting = stageOfFollow(follow);
      if (setting !== null) applyStage(store, setting);
      else if (follow.type === 'step') void stageOfStep(follow, key);
    } else if (item !== null && question !== null)
      applyStage(
        store,
        stageOfQuestion(item, question.phase),
        // A part that is to be found is not chosen beforehand.
        item.kind !== 'pick-part' || question.phase === 'revealed',
      );
  }
  async function stageOfStep(follow: Extract<Follow, { type: 'step' }>, key: string): Promise<void> {
    const topic = await ensureTopic(store, ports, follow.topic);
    const step = topic?.lesson.steps.find((each) => each.id === follow.step);
    if (step !== undefined && key === staged && here()) applyStage(store, step.stage);
  }
  const stageOfNow = (): void => {
    const { role, view, page } = get();
    if (role === 'learner' && view !== null) stageFor(view.question, view.session, view.follow);
    // The instructor follows nobody: the stage is theirs until a question sets it.
    if (role === 'instructor' && page !== null) stageFor(page.view.question, page.view.session, null);
  };

  const learner = learnerTalk({
    ports,
    get,
    set,
    send: (message) => link?.send(message) === true,
    onView: (view: LearnerView) => stageFor(view.question, view.session, view.follow),
  });

  function hearHost(message: HostMessage): void {
    switch (message.type) {
      case 'page':
        stageFor(message.page.view.question, message.page.view.session, null);
        set({ page: message.page });
        return;
      case 'report':
        set({ report: message });
        return;
      case 'keys':
        set({ keys: message.items });
        return;
      case 'done':
        set({ refused: null });
        return;
      case 'refused':
        set({ refused: message.why });
        return;
      default:
        return;
    }
  }

  async function connect(role: 'learner' | 'instructor'): Promise<void> {
    if (get().role === role && link !== null) return;
    link?.close();
    link = null;
    set({ role, refused: null });
    const made = await ports.classroom.link({
      onOpen: () => {
        if (role === 'learner') learner.hello();
        else made.send({ type: 'instruct', version: TALK_VERSION, secret });
      },
      onMessage: (message) => (role === 'learner' ? learner.hear(message) : hearHost(message)),
      onStatus: (status) => set({ link: status }),
    });
    link = made;
  }

  return {
    /** Asks who served this page; a phone that has a number here goes back to it. */
    async arrive(): Promise<void> {
      if (get().greeting === 'unknown' || get().greeting === null)
        set({ greeting: await ports.classroom.greet() });
      if (get().greeting === null) return;
      stageOfNow();
      if (get().role === 'nobody' && learner.kept() !== null) await connect('learner');
    },
    keptSeat: learner.kept,
    async join(code: string, seat: number, name: string | null): Promise<void> {
      await connect('learner');
      learner.join(code, seat, name);
    },
    answer: (answer: Answer, certainty: Certainty): void => learner.answer(answer, certainty),
    /** This phone gives its number up; what was answered stays with the host. */
    forget: (): void => learner.forget(),
    /** The instructor's screen; without a secret the one that was used here last. */
    async instruct(given: string | null): Promise<void> {
      const kept = given ?? ports.keep.read(KEPT_SECRET) ?? '';
      if (kept === secret && get().role === 'instructor') return;
      secret = kept;
      if (secret === '') return;
      ports.keep.write(KEPT_SECRET, secret);
      if (get().greeting === 'unknown') set({ greeting: await ports.classroom.greet() });
      if (get().greeting !== null) await connect('instructor');
    },
    order(order: HostOrder): void {
      if (link?.send({ ...order, id: `i${++ids}` }) !== true)
        set({ refused: { key: 'class.refused.no-connection' } });
    },
    closeReport: (): void => set({ report: null }),
    clearRefused: (): void => set({ refused: null }),
    /** Phones show the stage as it stands here. */
    followStage(): void {
      this.order({ type: 'follow', follow: { type: 'stage', stage: stageSettingOf(store.getState()) } });
    },
    loadTopic: (topic: string) => ensureTopic(store, ports, topic),
    /** The machine has come, or the place was opened again. */
    restage(): void {
      staged = '';
      stageOfNow();
    },
    leaveStage(): void {
      staged = '';
      giveStageBack(store, commands);
    },
  };
}
