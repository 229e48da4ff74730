/** Commands of the records: looking through what is kept, one file out and in, erasing. */
import {
  archiveText,
  readArchive,
  type StatementActor,
  statementsOf,
  summarise,
  summariseWork,
} from '../../core/records';
import type { Ports } from '../ports';
import { JOB_HISTORY, JOB_RECORDS } from '../jobs/kept';
import { PRACTICE_RECORDS } from '../practice/kept';
import { ANSWER_RECORDS, TEST_RECORDS } from '../quiz/commands';
import type { AppStore } from '../store';
import { INITIAL_RECORDS, type RecordsState } from './state';

/** Small notes about a person; units, language and look are the browser's own and stay. */
const PERSONAL_NOTES = ['drumbench.class.seat.1', 'drumbench.class.secret.1', 'drumbench.record-store.1'];

export function createRecordsCommands(store: AppStore, ports: Ports) {
  const get = (): RecordsState => store.getState().records;
  const set = (part: Partial<RecordsState>): void => store.setState({ records: { ...get(), ...part } });
  return {
    async look(): Promise<void> {
      if (get().phase === 'idle') set({ phase: 'loading' });
      const [{ records, unreadable }, lasting, space] = await Promise.all([
        ports.records.all(),
        ports.records.lasting(),
        ports.records.space(),
      ]);
      const counts: Record<string, number> = {};
      for (const { collection } of records) counts[collection] = (counts[collection] ?? 0) + 1;
      const textsOf = (name: string): readonly string[] =>
        records.flatMap(({ collection, text }) => (collection === name ? [text] : []));
      const answers = records.filter((each) => each.collection === ANSWER_RECORDS);
      set({
        phase: 'ready',
        lasting,
        space,
        counts,
        unreadable,
        answers: summarise(answers.map((each) => each.text)),
        work: summariseWork({
          tests: textsOf(TEST_RECORDS),
          practice: textsOf(PRACTICE_RECORDS),
          jobs: textsOf(JOB_RECORDS),
          jobHistory: textsOf(JOB_HISTORY),
        }),
      });
    },
    /** Everything as one file's text. */
    async exported(): Promise<string> {
      return archiveText((await ports.records.all()).records, Date.now());
    },
    /** Answers as statements for a learning record store, as a file's text. */
    async statements(actor: StatementActor): Promise<string> {
      const { records } = await ports.records.all();
      const answers = records.filter((each) => each.collection === ANSWER_RECORDS);
      return JSON.stringify(statementsOf(answers, actor, store.getState().settings.language), null, 1);
    },
    /** @param replace what is there already under the same name gives way; else it stays */
    async take(file: string, text: string, replace: boolean): Promise<void> {
      const read = readArchive(text, file);
      if (!read.ok) {
        set({ imported: { file, taken: 0, known: 0, refused: 0, faults: read.faults } });
        return;
      }
      let [taken, known, refused] = [0, 0, 0];
      for (const { collection, key, text: kept } of read.value.records) {
        const before = await ports.records.read(collection, key);
        if (before === kept || (before !== null && !replace)) known++;
        else if (await ports.records.write(collection, key, kept)) taken++;
        else refused++;
      }
      set({ imported: { file, taken, known, refused, faults: read.value.faults } });
      await this.look();
    },
    /** Asks the browser not to clear these records when space is short; true when it agreed. */
    async hold(): Promise<boolean> {
      const held = await ports.records.hold();
      set({ space: await ports.records.space() });
      return held;
    },
    /** Erases one collection. */
    async eraseOne(collection: string): Promise<void> {
      for (const { key } of await ports.records.list(collection)) await ports.records.remove(collection, key);
      await this.look();
    },
    async eraseAll(): Promise<void> {
      await ports.records.clear();
      for (const key of PERSONAL_NOTES) if (ports.keep.read(key) !== null) ports.keep.write(key, '');
      set(INITIAL_RECORDS);
      await this.look();
    },
  };
}
