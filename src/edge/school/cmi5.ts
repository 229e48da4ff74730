/**
 * Talks with a system that launched by cmi5: fetches the token, reads what the system says of the launch, sends
 * statements in their order. Each waits for the one before it; what could not be sent goes with the next.
 */
import {
  type Cmi5Kept,
  type Cmi5Launch,
  type Cmi5LaunchData,
  type Cmi5Said,
  cmi5Statement,
  type HearTrouble,
  keptAfter,
  LAUNCH_DATA,
  LEARNER_PREFERENCES,
  newsOf,
  NOTHING_KEPT,
  readCmi5Kept,
  readLaunchData,
  RESUME_LIMIT_2004,
  RESUME_STATE,
  type SchoolLink,
  timeinterval2004,
} from '../../core/records';
import { resourceUrl, XAPI_VERSION } from './record-store';

interface Surroundings {
  readonly hear: HearTrouble;
  readonly now: () => number;
  readonly newId: () => string;
  /** Leaves to the address that the system gave, once the session has ended; not while the page goes away by itself. */
  readonly leave?: (address: string) => void;
}

/** A browser sends this much of a page that goes away, at most (fetch's keepalive). */
const LAST_WORD_bytes = 60_000;

/** @param launch null where the address is no launch of cmi5 */
export function cmi5Link(launch: Cmi5Launch | null, around: Surroundings): SchoolLink {
  const { hear, now, newId } = around;
  let auth = '';
  let data: Cmi5LaunchData | null = null;
  let kept: Cmi5Kept = NOTHING_KEPT;
  let judged = false;
  let open = false;
  const began_ms = now();
  /** Statements that the store does not have for sure, oldest first. */
  let waiting: Readonly<Record<string, unknown>>[] = [];
  let chain: Promise<void> = Promise.resolve();

  const request = (path: string, init: RequestInit = {}): Promise<Response> =>
    fetch(resourceUrl(launch!.endpoint, path), {
      ...init,
      headers: {
        ...(init.body === undefined ? {} : { 'content-type': 'application/json' }),
        'x-experience-api-version': XAPI_VERSION,
        authorization: auth,
      },
      credentials: 'omit',
    });
  const statePath = (stateId: string): string => {
    const { activityId, actor, registration } = launch!;
    const query = new URLSearchParams({ stateId, activityId, agent: JSON.stringify(actor), registration });
    return `activities/state?${query.toString()}`;
  };
  const say = (said: Cmi5Said, at_ms = now()): void =>
    void waiting.push(cmi5Statement(said, launch!, data!, { id: newId(), at_ms }));
  const put = (state: Cmi5Kept, keepalive = false): Promise<Response> =>
    request(statePath(RESUME_STATE), { method: 'PUT', body: JSON.stringify(state), keepalive });

  /** Sends what waits, all in one, so that order holds; a conflict means that the store has them. */
  async function flush(): Promise<void> {
    if (waiting.length === 0) return;
    const batch = waiting;
    const response = await request('statements', { method: 'POST', body: JSON.stringify(batch) });
    if (!response.ok && response.status !== 409) throw new Error(String(response.status));
    waiting = waiting.filter((each) => !batch.includes(each));
  }
  const trouble = (what: 'refused' | 'lost', error: unknown, about: string): void => {
    const code = /^\d+$/.exec((error as Error).message)?.[0] ?? '';
    hear({ what, code, about });
  };
  /** One after another: a newer state never overtakes an older one. */
  function later(state: Cmi5Kept): void {
    chain = chain.then(async () => {
      try {
        await flush();
        const response = await put(state);
        if (!response.ok) throw new Error(String(response.status));
        hear(null);
      } catch (error) {
        trouble('lost', error, 'statements');
      }
    });
  }

  async function token(): Promise<string> {
    const response = await fetch(launch!.fetch, { method: 'POST', credentials: 'omit' });
    const said = (await response.json()) as Record<string, unknown>;
    if (typeof said['auth-token'] === 'string') return said['auth-token'];
    throw new Error(typeof said['error-text'] === 'string' ? said['error-text'] : String(response.status));
  }

  return {
    async open() {
      if (launch === null) {
        hear({ what: 'missing', code: '', about: '' });
        return null;
      }
      try {
        auth = `Basic ${await token()}`;
        const answer = await request(statePath(LAUNCH_DATA));
        data = answer.ok ? readLaunchData(await answer.text()) : null;
        if (data === null) throw new Error(answer.ok ? LAUNCH_DATA : String(answer.status));
        // The specification has every unit ask; which language the package is in was settled when it was made.
        const profile = new URLSearchParams({
          profileId: LEARNER_PREFERENCES,
          agent: JSON.stringify(launch.actor),
        });
        await request(`agents/profile?${profile.toString()}`).catch(() => null);
        const before = await request(statePath(RESUME_STATE));
        if (before.ok) kept = readCmi5Kept(await before.text());
        judged = data.launchMode === 'Normal';
        say({ verb: 'initialized' });
        await flush();
      } catch (error) {
        hear({ what: 'refused', code: '', about: (error as Error).message });
        return null;
      }
      open = true;
      const { name } = launch.actor;
      return {
        resume: kept.resume,
        limit: RESUME_LIMIT_2004 / 2,
        judged,
        mastery: data.masteryScore,
        learner: typeof name === 'string' ? name : '',
      };
    },
    answered(answer) {
      if (!open || !judged) return;
      say({ verb: 'answered', answered: answer }, answer.at_ms);
    },
    tell(report) {
      if (!open) return;
      if (judged) for (const said of newsOf(report, kept)) say(said);
      kept = keptAfter(report, kept, judged);
      later(kept);
    },
    end(report) {
      if (!open) return;
      open = false;
      if (judged) for (const said of newsOf(report, kept)) say(said);
      kept = keptAfter(report, kept, judged);
      say({ verb: 'terminated', result: { duration: timeinterval2004((now() - began_ms) / 1000) } });
      // The page goes away and may not wait: everything that is open in one request, the end last.
      let batch = waiting;
      while (batch.length > 1 && JSON.stringify(batch).length > LAST_WORD_bytes) batch = batch.slice(1);
      void request('statements', { method: 'POST', body: JSON.stringify(batch), keepalive: true }).catch(
        () => null,
      );
      void put(kept, true).catch(() => null);
      if (data?.returnURL != null) around.leave?.(data.returnURL);
    },
  };
}
