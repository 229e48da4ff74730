/** The instructor's screen: setting up, the lobby, running a session, and what it came to. */
import { useEffect, useState } from 'react';
import type { HostPage } from '../../../../core/classroom';
import { addressOf, createClassCommands } from '../../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../../bind';
import { LinkLine } from '../LinkLine';
import { NoHost } from '../NoHost';
import { HostFollow } from './HostFollow';
import { HostLobby } from './HostLobby';
import { HostPaper } from './HostPaper';
import { HostResults } from './HostResults';
import { HostRun } from './HostRun';
import { HostSeats } from './HostSeats';
import { HostSetup } from './HostSetup';

const TABS = ['run', 'seats', 'follow', 'paper', 'results'] as const;
/** 'wall': the session alone, for a projector. */
type Tab = (typeof TABS)[number] | 'wall';
const isTab = (word: string | undefined): word is Tab => word === 'wall' || TABS.some((tab) => tab === word);

export function HostScreen() {
  const { t } = useSpeech();
  const commands = useCommands();
  const room = usePlaceCommands(createClassCommands);
  const word = useApp((s) => s.route.path[1]);
  const greeting = useApp((s) => s.class.greeting);
  const page = useApp((s) => s.class.page);
  const [asked, setAsked] = useState(false);
  // An address that is no tab is the secret: it is taken out of the address before anybody can read it off the wall.
  const secret = word === undefined || isTab(word) ? null : word;
  useEffect(() => {
    if (secret !== null) {
      window.history.replaceState(null, '', addressOf({ place: 'class', path: ['host'] }));
      commands.go('class', 'host');
    }
    void room.instruct(secret).then(() => setAsked(true));
  }, [room, commands, secret]);
  if (greeting === null) return <NoHost />;
  if (page === null)
    return (
      <div className="panel-body">
        <h2>{t('class.instructor')}</h2>
        <p>{t(asked ? 'class.need-secret' : 'class.looking')}</p>
        <LinkLine />
      </div>
    );
  const tab: Tab = isTab(word) ? word : 'run';
  return (
    <div className="panel-body class-host" data-tab={tab}>
      <header className="class-head no-print">
        {tab !== 'wall' && (
          <nav className="class-tabs" aria-label={t('class.parts')}>
            {TABS.map((each) => (
              <a
                key={each}
                href={addressOf({ place: 'class', path: each === 'run' ? ['host'] : ['host', each] })}
                aria-current={each === tab ? 'page' : undefined}
              >
                {t(`class.tab.${each}`)}
              </a>
            ))}
          </nav>
        )}{' '}
        <LinkLine />
      </header>
      <Tabbed tab={tab} page={page} />
    </div>
  );
}

function Tabbed({ tab, page }: { readonly tab: Tab; readonly page: HostPage }) {
  switch (tab) {
    case 'seats':
      return <HostSeats page={page} />;
    case 'follow':
      return <HostFollow page={page} />;
    case 'paper':
      return <HostPaper page={page} />;
    case 'results':
      return <HostResults page={page} />;
    case 'run':
    case 'wall':
      if (page.view.phase === 'lobby') return <HostLobby page={page} />;
      if (page.view.phase === 'asking') return <HostRun page={page} />;
      return <HostSetup page={page} />;
  }
}
