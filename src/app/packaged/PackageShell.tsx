/** The page of a packaged lesson: that lesson and its quiz beside the stage, without the rest of the app. */
import { useEffect, useRef } from 'react';
import type { SchoolSession } from '../../store';
import { useApp, useCommands, useSpeech } from '../../view/bind';
import { Announcer, Boundary, ShotClock, useLayout } from '../../view/panels';
import { UnitsChoice } from '../../view/panels/common/UnitsChoice';
import { SchoolContent, SchoolNotice } from '../../view/panels/school';
import { useAppearance, useEscape } from '../page';
import { StageColumn } from '../shell';
import '../shell.css';

export function PackageShell({ session }: { readonly session: SchoolSession }) {
  const { t } = useSpeech();
  const layout = useLayout();
  const { place, path } = useApp((s) => s.route);
  const lesson = useApp((s) => s.lessons.topics[s.school?.topic ?? '']?.lesson);
  const troubled = useApp((s) => s.school?.trouble != null || s.school?.phase === 'closed');
  const home = place === 'lessons' && path.length === 0;
  const box = useRef<HTMLDivElement>(null);
  const inner = path.join('/');
  useAppearance();
  useEscape();
  useEffect(() => {
    box.current?.scrollTo?.({ top: 0 });
  }, [place, inner]);
  return (
    <div className="shell school-shell" data-layout={layout} data-place-width="panel">
      <a className="skip" href="#stage">
        {t('app.skip')}
      </a>
      <div>
        {/* Lesson and glossary have their own way back. */}
        <Bar title={lesson?.title ?? t('app.name')} home={place === 'lessons'} />
        {troubled && !home && (
          <div className="school-alert">
            <SchoolNotice />
          </div>
        )}
      </div>
      <main className="work">
        <StageColumn layout={layout} />
        <aside className="side panel place-side" aria-label={lesson?.title ?? t('places.lessons')}>
          <div
            className="place-body"
            data-place="school"
            ref={box}
            tabIndex={0}
            role="region"
            aria-label={t('places.lessons')}
          >
            <Boundary words="place-fault">
              <SchoolContent session={session} />
            </Boundary>
          </div>
        </aside>
      </main>
      <ShotClock />
      <Announcer />
    </div>
  );
}

function Bar({ title, home }: { readonly title: string; readonly home: boolean }) {
  const { t } = useSpeech();
  const commands = useCommands();
  return (
    <header className="school-bar">
      <h1>{title}</h1>
      {!home && (
        <button type="button" className="button narrow" onClick={() => commands.go('lessons')}>
          {t('school.home')}
        </button>
      )}
      <UnitsChoice />
    </header>
  );
}
