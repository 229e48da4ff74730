// @vitest-environment jsdom
import { act, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { defaultOptions } from '../../src/core/machine';
import {
  createQuizCommands,
  REVIEW_RECORDS,
  ANSWER_RECORDS,
  today,
  topicItems,
  selectSubject,
} from '../../src/store';
import type { Item } from '../../src/core/quiz';
import LessonsPlace from '../../src/view/panels/lessons/LessonsPlace';
import QuizPlace from '../../src/view/panels/quiz/QuizPlace';
import { readNumber } from '../../src/view/panels/learn/NumberField';
import { memoryRecords, show, smallDocument } from './fixture';
import { course, topic } from './learn-fixture';

let document_: MachineDocument;
beforeAll(async () => {
  document_ = await smallDocument();
});
let records = memoryRecords();
beforeEach(() => {
  records = memoryRecords();
});

const graph = () => ({ result: Promise.resolve(null), cancel: () => undefined });
const open = (place: 'lessons' | 'quiz', ...path: string[]) =>
  show(
    place === 'lessons' ? <LessonsPlace /> : <QuizPlace />,
    { document: document_, optionsOn: defaultOptions(document_.machine), route: { place, path } },
    { course, records, graph },
  );
const sure = async (user: ReturnType<typeof userEvent.setup>, level = 'Sure') =>
  user.click(screen.getByRole('radio', { name: new RegExp(`^${level}`) }));

describe('lessons', () => {
  it('lists the course and opens at the first step, with the stage as the step has it', async () => {
    const user = userEvent.setup();
    const { store } = await open('lessons');
    await screen.findByText('A small lesson');
    expect(screen.getByText(/0 of 3 steps done/)).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Start: A small lesson' }));
    await screen.findByRole('heading', { name: 'Find it' });
    expect(store.getState().route).toEqual({ place: 'lessons', path: ['small', 'find-it'] });
    expect(store.getState().cameraWish.view).toBe('front');
    expect(document.activeElement?.textContent).toBe('Find it');
  });

  it('walks from first to last: task, caution before the text, prediction, check; progress is kept', async () => {
    const user = userEvent.setup();
    const { store, commands } = await open('lessons', 'small');
    await screen.findByRole('heading', { name: 'Find it' });
    expect(screen.queryByText('You found it.')).toBeNull();
    act(() => commands.select('tube'));
    await screen.findByText('You found it.');
    await user.click(screen.getByRole('button', { name: 'Next' }));
    await screen.findByRole('heading', { name: 'Say first' });
    const caution = screen.getByRole('note');
    expect(
      caution.compareDocumentPosition(screen.getByText('Think.')) & Node.DOCUMENT_POSITION_FOLLOWING,
    ).toBeTruthy();
    expect(screen.queryByText('Now you see.')).toBeNull();
    await user.click(screen.getByRole('radio', { name: 'It gets more' }));
    await sure(user);
    await user.click(screen.getByRole('button', { name: 'Answer' }));
    await screen.findByText('Now you see.');
    await user.click(screen.getByRole('button', { name: 'Next' }));
    await screen.findByRole('heading', { name: 'Set it' });
    act(() => commands.setExplode(0.5));
    await screen.findByText('Apart.');
    await user.click(screen.getByRole('radio', { name: 'Bee' }));
    await sure(user);
    await user.click(screen.getByRole('button', { name: 'Answer' }));
    expect((await screen.findByText('Sure, and wrong.')).closest('[tabindex]')).toBe(document.activeElement);
    expect(screen.getByText('Bee is no answer.')).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Finish' }));
    await screen.findByText(/3 of 3 steps done/);
    expect(JSON.parse((await records.read('lessons', 'small'))!)).toMatchObject({
      done: ['find-it', 'say-first', 'set-it'],
      tasks: ['find-it', 'say-first', 'set-it'],
    });
    expect(await records.list(ANSWER_RECORDS)).toHaveLength(2);
    expect(JSON.parse((await records.read(REVIEW_RECORDS, 'q-one'))!)).toMatchObject({
      box: 1,
      sureAndWrong: true,
    });
    // The person's own stage is back.
    expect(store.getState().explode).toBe(0);
  });

  it('takes up where one left off, pages by arrow keys, and says so when there is no such lesson', async () => {
    const user = userEvent.setup();
    await records.write(
      'lessons',
      'small',
      JSON.stringify({ lesson: 'small', done: ['find-it'], tasks: [], at: 'say-first', day: 1 }),
    );
    const { store, commands } = await open('lessons', 'small');
    await screen.findByRole('heading', { name: 'Say first' });
    await user.keyboard('{ArrowLeft}');
    await screen.findByRole('heading', { name: 'Find it' });
    await user.keyboard('{ArrowRight}{ArrowRight}');
    await screen.findByRole('heading', { name: 'Set it' });
    expect(store.getState().route.path).toEqual(['small', 'set-it']);
    act(() => commands.go('lessons', 'no-such'));
    await screen.findByText('There is no such lesson.');
  });

  it('follows links to a part and to a word, and finds words', async () => {
    const user = userEvent.setup();
    const { store } = await open('lessons', 'small', 'find-it');
    await user.click(await screen.findByRole('button', { name: 'tube' }));
    expect(store.getState().selectedPart).toBe('tube');
    await user.click(screen.getByRole('button', { name: 'word' }));
    await screen.findByRole('heading', { name: 'Glossary' });
    await waitFor(() => expect(document.activeElement?.textContent).toBe('Word'));
    await user.type(screen.getByRole('searchbox'), 'othe');
    expect(screen.queryByText('A word.')).toBeNull();
    expect(screen.getByText('1 words')).toBeTruthy();
  });
});

/** Answers each kind right, by keyboard alone. */
const ANSWER: Record<string, (user: ReturnType<typeof userEvent.setup>, item: Item) => Promise<void>> = {
  'choose-one': (user) => choose(user, 'Ay'),
  'choose-several': async (user) => {
    await choose(user, 'Ay');
    await choose(user, 'Cee');
  },
  'pick-part': (user, item) => choose(user, item.kind === 'pick-part' ? nameOf('tube') : ''),
  order: async (user) => {
    for (const name of ['Second', 'First'])
      for (let i = 0; i < 2; i++) {
        const up = screen.getByRole('button', { name: `Move up: ${name}` });
        if ((up as HTMLButtonElement).disabled) break;
        up.focus();
        await user.keyboard('{Enter}');
      }
  },
  number: async (user) => {
    screen.getByRole('textbox').focus();
    await user.keyboard('12.3');
  },
  direction: (user) => choose(user, 'It gets more'),
  match: async (user) => {
    await user.selectOptions(screen.getByRole('combobox', { name: 'Ay' }), 'Does A');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Bee' }), 'Does B');
  },
  'find-fault': (user) => choose(user, 'A loose screw'),
};
const nameOf = (id: string) => (id === 'tube' ? /tube/i : id);
async function choose(user: ReturnType<typeof userEvent.setup>, name: string | RegExp): Promise<void> {
  const list = screen.getAllByRole('group').find((g) => g.classList.contains('answer-list'))!;
  const input = [
    ...within(list).queryAllByRole('radio', { name }),
    ...within(list).queryAllByRole('checkbox', { name }),
  ][0]!;
  input.focus();
  await user.keyboard(' ');
}

describe('quiz', () => {
  it('asks every kind by keyboard, tells after each, and shows the results', async () => {
    const user = userEvent.setup();
    const { store } = await open('quiz');
    await user.click(await screen.findByRole('radio', { name: 'Bank' }));
    await user.click(screen.getByRole('button', { name: 'Practise' }));
    const seen = new Set<string>();
    for (let i = 1; i <= topic.items.length; i++) {
      await screen.findByText(`Question ${i} of ${topic.items.length}`);
      const item = store.getState().quiz.run!.items[i - 1]!;
      seen.add(item.kind);
      await ANSWER[item.kind]!(user, item);
      screen.getByRole('radio', { name: /^Fairly sure/ }).focus();
      await user.keyboard(' ');
      screen.getByRole('button', { name: 'Answer' }).focus();
      await user.keyboard('{Enter}');
      expect(await screen.findByText('Mark 2'), item.kind).toBeTruthy();
      await user.click(screen.getByRole('button', { name: /Next question|See the results/ }));
    }
    expect(seen.size).toBe(8);
    await screen.findByText('8 of 8 right');
    expect(screen.getByText('Mark 16 of 24')).toBeTruthy();
    expect(await records.list(ANSWER_RECORDS)).toHaveLength(8);
  });

  it('tells nothing in a test until it is handed in, sure and wrong first', async () => {
    const user = userEvent.setup();
    const { store } = await open('quiz');
    await user.click(await screen.findByRole('radio', { name: 'Bank' }));
    await user.click(screen.getByRole('button', { name: 'Take a test' }));
    await screen.findByText(/Question 1 of 8/);
    const items = store.getState().quiz.run!.items;
    const at = items.findIndex((item) => item.kind === 'choose-one');
    await user.click(screen.getByRole('button', { name: `Question ${at + 1}, open` }));
    await user.click(await screen.findByRole('radio', { name: 'Bee' }));
    await sure(user);
    await user.click(screen.getByRole('button', { name: 'Keep answer' }));
    expect(screen.queryByText(/Sure, and wrong/)).toBeNull();
    expect(screen.getByRole('button', { name: `Question ${at + 1}, answered` })).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Hand in, 7 open' }));
    await screen.findByText('0 of 8 right');
    const groups = screen.getAllByRole('heading', { level: 3 }).map((h) => h.textContent);
    expect(groups[0]).toBe('Sure and wrong: look at these first');
    expect(screen.getByText('Bee is no answer.')).toBeTruthy();
    await user.click(screen.getByRole('button', { name: 'Another sheet' }));
    // What was wrong comes back tomorrow; what was left out was not answered.
    await screen.findByText('Nothing is due today.');
    expect(Object.keys(store.getState().quiz.cards)).toEqual(['q-one']);
    expect(await records.list(ANSWER_RECORDS)).toHaveLength(8);
  });

  it('asks in the review what is due, the sure and wrong one first, and moves its box', async () => {
    const user = userEvent.setup();
    const day = today();
    const card = (item: string, due: number, sureAndWrong = false) =>
      records.write(
        REVIEW_RECORDS,
        item,
        JSON.stringify({ item, box: 2, due, seen: day - 3, right: 1, wrong: 0, sureAndWrong }),
      );
    await card('q-number', day);
    await card('q-one', day, true);
    await card('q-order', day + 1);
    await card('gone', day);
    const { store } = await open('quiz');
    await screen.findByText('3 questions are due today.');
    await user.click(screen.getByRole('button', { name: 'Start the review' }));
    await screen.findByText('Question 1 of 2');
    expect(store.getState().quiz.run!.items.map((item) => item.id)).toEqual(['q-one', 'q-number']);
    await ANSWER['choose-one']!(user, store.getState().quiz.run!.items[0]!);
    await sure(user);
    await user.click(screen.getByRole('button', { name: 'Answer' }));
    await screen.findByText('Mark 3');
    expect(store.getState().quiz.cards['q-one']).toMatchObject({ box: 3, due: day + 4, sureAndWrong: false });
  });

  it('takes a part picked on the stage', async () => {
    const { store, commands } = await open('quiz', 'run');
    const subject = selectSubject(store.getState())!;
    const item = topicItems(topic, subject).find((each) => each.kind === 'pick-part')!;
    const quiz = createQuizCommands(store, { course, records, graph } as never, commands);
    act(() => {
      store.setState({
        quiz: {
          ...store.getState().quiz,
          run: {
            mode: 'practice',
            seed: 1,
            items: [item],
            given: [null],
            at: 0,
            phase: 'asking',
            endsAt_ms: null,
          },
        },
      });
    });
    await screen.findByText('Which is the tube?');
    act(() => commands.select('tube'));
    const user = userEvent.setup();
    await sure(user);
    await user.click(screen.getByRole('button', { name: 'Answer' }));
    await screen.findByText('Mark 3');
    expect(quiz).toBeDefined();
  });

  it('prints a sheet with its key and the seed that draws it again', async () => {
    const { store } = await open('quiz', 'paper', '77');
    await screen.findByRole('heading', { name: 'Answer key' });
    const first = store.getState().quiz.paper!.items;
    const again = await open('quiz', 'paper', '77');
    await screen.findByRole('heading', { name: 'Answer key' });
    expect(again.store.getState().quiz.paper!.items).toEqual(first);
    expect(screen.getAllByText('Sheet 77')).toHaveLength(2);
  });
});

describe('typed numbers', () => {
  it('take point and comma, and nothing that is no number', () => {
    expect(['12.5', '12,5', ' 1 250 ', '1,250.5', '-3', '.5'].map(readNumber)).toEqual([
      12.5, 12.5, 1250, 1250.5, -3, 0.5,
    ]);
    expect(['', 'x', '1e5', '1.2.3', '--1', '1,2,3'].map(readNumber)).toEqual([
      null,
      null,
      null,
      null,
      null,
      null,
    ]);
  });
});
