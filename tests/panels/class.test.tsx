// @vitest-environment jsdom
/** The screens of the class over a host that is played by the test. */
import { act, cleanup, fireEvent } from '@testing-library/react';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  type ClassGreeting,
  EMPTY_CLASS,
  type HostMessage,
  type HostPage,
  instructorView,
  learnerView,
  type LinkListener,
  withoutKey,
} from '../../src/core/classroom';
import type { ClassroomPort } from '../../src/store';
import ClassPlace from '../../src/view/panels/class/ClassPlace';
import { harmless } from '../../src/view/panels/class/host/results-csv';
import { answer, ITEMS, learner, move, questionsOf, run, session } from '../classroom/items';
import { show } from './fixture';

afterEach(cleanup);

const greeting: ClassGreeting = { class: true, version: 1, settings: EMPTY_CLASS.settings };
const items = questionsOf(ITEMS).map((question) => question.item);
const joined = run([{ type: 'join', learner: learner(1), seat: 7, name: null }]);
const open = run([session(), move('open')], joined);

/** What the page says, and the host's part of the talk. */
function playedHost() {
  const said: Record<string, unknown>[] = [];
  let listener: LinkListener | undefined;
  let online = true;
  const port: ClassroomPort = {
    greet: () => Promise.resolve(greeting),
    link: (own) => {
      listener = own;
      return Promise.resolve({
        send: (message: object) => {
          if (online) said.push(message as Record<string, unknown>);
          return online;
        },
        close: () => undefined,
      });
    },
  };
  return {
    port,
    said,
    of: (type: string) => said.filter((each) => each['type'] === type),
    say: (message: HostMessage) => act(() => listener!.onMessage(message)),
    line: (up: boolean) =>
      act(() => {
        online = up;
        listener!.onStatus(up ? 'open' : 'lost');
        if (up) listener!.onOpen();
      }),
  };
}

function memoryKeep() {
  const kept = new Map<string, string>();
  return {
    read: (key: string) => kept.get(key) ?? null,
    write: (key: string, value: string) => {
      kept.set(key, value);
      return true;
    },
  };
}

const route = (...path: string[]) => ({ route: { place: 'class' as const, path } });
const settle = () => act(() => new Promise<void>((done) => setTimeout(done)));

describe('a phone', () => {
  let host = playedHost();
  let keep = memoryKeep();
  beforeEach(() => {
    host = playedHost();
    keep = memoryKeep();
  });
  const arrive = async () => {
    const shown = await show(<ClassPlace />, route('ABC234'), { classroom: host.port, keep });
    await settle();
    return shown;
  };
  const sit = async () => {
    const shown = await arrive();
    fireEvent.change(shown.getByLabelText('Your number'), { target: { value: '7' } });
    fireEvent.click(shown.getByRole('button', { name: 'Join' }));
    await settle();
    host.line(true);
    host.say({ type: 'joined', view: learnerView(open, learner(1))! });
    return shown;
  };

  it('says so where the page comes from no class host', async () => {
    const shown = await show(<ClassPlace />, route());
    await settle();
    expect(shown.container.textContent).toContain('npm run classroom');
  });

  it('joins with the code of the address, a number, and a token that is kept before it is sent', async () => {
    await sit();
    const [sent] = host.of('join');
    expect(sent).toMatchObject({ code: 'ABC234', seat: 7, name: null });
    expect(String(sent!['token'])).toMatch(/^[A-Za-z0-9_-]{32}$/);
    expect(keep.read('drumbench.class.seat.1')).toContain(String(sent!['token']));
  });

  it('keeps an answer until it is confirmed, through a lost line and a reload', async () => {
    const shown = await sit();
    expect(shown.container.querySelector('form.ask')).not.toBeNull();
    host.line(false);
    fireEvent.click(shown.container.querySelectorAll('.answer-list input')[1]!);
    fireEvent.click(shown.getByLabelText(/Fairly sure/));
    fireEvent.click(shown.getByRole('button', { name: 'Send answer' }));
    expect(shown.container.textContent).toContain('kept here and on its way');
    expect(host.of('answer')).toEqual([]);
    // The page is closed and opened again; nothing but what was kept is left.
    const before = host.of('join')[0]!['token'];
    host = playedHost();
    const again = await arrive();
    host.line(true);
    expect(host.of('resume')).toMatchObject([{ token: before }]);
    host.say({ type: 'joined', view: learnerView(open, learner(1))! });
    const [sent] = host.of('answer');
    expect(sent).toMatchObject({ question: 0, revision: 1, certainty: 2, kept: true });
    expect(again.container.textContent).toContain('on its way');
    host.say({ type: 'accepted', id: String(sent!['id']) });
    expect(again.container.textContent).toContain('Your answer is in.');
    host.line(false);
    host.line(true);
    host.say({
      type: 'joined',
      view: learnerView(run([answer(1, 0, sent!['answer'] as never)], open), learner(1))!,
    });
    expect(host.of('answer')).toHaveLength(1);
  });

  it('shows the own result, the class and the reason once it is revealed', async () => {
    const shown = await sit();
    const after = run(
      [answer(1, 0, { type: 'choice', ids: ['o2'] }, { certainty: 3 }), move('reveal')],
      open,
    );
    expect(shown.container.textContent).not.toContain('KEY-EXPLAIN');
    host.say({ type: 'view', view: learnerView(after, learner(1))! });
    const text = shown.container.textContent!;
    expect(text).toContain('Sure, and wrong.');
    expect(text).toContain('The class: 0 of 1 right');
    expect(text).toContain('KEY-EXPLAIN');
    expect(text).toContain('says yes');
  });

  it('says what was refused, and asks to join anew where it is not known', async () => {
    const shown = await sit();
    host.say({ type: 'refused', id: 'x', why: { key: 'class.refused.not-open' } });
    expect(shown.getByRole('alert').textContent).toContain('Too late');
    host.say({ type: 'refused', id: null, why: { key: 'class.refused.unknown' } });
    expect(shown.getByRole('button', { name: 'Join' })).toBeTruthy();
  });
});

describe('the instructor’s screen', () => {
  const page = (state = open): HostPage => ({
    view: instructorView(state, new Set([learner(1)])),
    draft: null,
    past: [],
    stock: { topics: [], generates: true },
    code: 'ABC234',
    addresses: ['http://192.0.2.7:4180/'],
    learnersOnline: 1,
  });
  const SECRET = 's'.repeat(32);
  const arrive = async (host: ReturnType<typeof playedHost>, ...path: string[]) => {
    const shown = await show(<ClassPlace />, route('host', ...path), {
      classroom: host.port,
      keep: memoryKeep(),
    });
    await settle();
    return shown;
  };

  it('takes the secret out of the address, and moves on by the keys of a presenter', async () => {
    const host = playedHost();
    const shown = await arrive(host, SECRET);
    expect(shown.store.getState().route.path).toEqual(['host']);
    host.line(true);
    expect(host.of('instruct')).toMatchObject([{ secret: SECRET }]);
    host.say({ type: 'page', page: page() });
    expect(shown.container.querySelector('.class-count')!.textContent).toContain('0 answers, 1 here');
    fireEvent.keyDown(window, { key: 'PageDown' });
    fireEvent.keyDown(window, { key: 'PageUp' });
    fireEvent.keyDown(window, { key: 'b' });
    expect(host.of('move').map((each) => each['move'])).toEqual(['close', 'back', 'pause']);
    fireEvent.click(shown.getByLabelText('Presenter keys'));
    fireEvent.keyDown(window, { key: 'PageDown' });
    expect(host.of('move')).toHaveLength(3);
  });

  it('shows nothing of a key before the reveal, and names as text', async () => {
    const settings = { title: '', mode: 'solo' as const, seats: 30, names: true };
    const named = run(
      [
        { type: 'settings', settings },
        { type: 'join', learner: learner(1), seat: 7, name: '<img src=x onerror=alert(1)>' },
        session(),
        move('open'),
        answer(1, 0, { type: 'choice', ids: ['o1'] }),
      ],
      EMPTY_CLASS,
    );
    const host = playedHost();
    const shown = await arrive(host, SECRET);
    host.line(true);
    host.say({ type: 'page', page: page(named) });
    expect(shown.container.textContent).not.toContain('KEY-');
    expect(shown.container.textContent).not.toContain('onerror');
    act(() => shown.commands.go('class', 'host', 'seats'));
    expect(shown.container.textContent).toContain('<img src=x onerror=alert(1)>');
    expect(shown.container.querySelector('img')).toBeNull();
    expect(JSON.stringify(page(named))).toContain(JSON.stringify(withoutKey(items[0]!)));
  });

  it('never writes a cell that a spreadsheet would run', () => {
    expect(['=1+1', '+1', '-1', '@a', 'Mia'].map(harmless)).toEqual(["'=1+1", "'+1", "'-1", "'@a", 'Mia']);
  });
});
