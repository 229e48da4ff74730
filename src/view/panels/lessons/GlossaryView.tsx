/** Words of the trade, with a search; a word's address opens at it. */
import { useEffect, useRef, useState } from 'react';
import type { Term } from '../../../core/lessons';
import { createLessonCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { folded } from '../common/names';
import { Rich } from '../learn/Said';
import { useTeller } from '../learn/teller';
import { useLinks } from '../learn/use-links';

const matches = (term: Term, search: string): boolean => {
  const text = folded([term.name, ...term.also].join(' '));
  return folded(search)
    .split(/\s+/)
    .filter(Boolean)
    .every((word) => text.includes(word));
};

export function GlossaryView({ termId }: { readonly termId: string | undefined }) {
  const { t, language } = useSpeech();
  const commands = useCommands();
  const { loadGlossary } = usePlaceCommands(createLessonCommands);
  const glossary = useApp((s) => s.lessons.glossary);
  const wanted = useApp((s) => s.settings.language);
  const packaged = useApp((s) => s.school !== null);
  const [search, setSearch] = useState('');
  const list = useRef<HTMLDListElement>(null);
  useEffect(() => void loadGlossary(), [loadGlossary, wanted]);
  useEffect(() => {
    if (glossary === null || termId === undefined) return;
    const place = [...(list.current?.querySelectorAll<HTMLElement>('[data-term]') ?? [])].find(
      (each) => each.dataset['term'] === termId,
    );
    place?.scrollIntoView?.({ block: 'start' });
    place?.focus({ preventScroll: true });
  }, [glossary, termId]);
  const terms = [...(glossary?.terms ?? [])]
    .filter((term) => matches(term, search))
    .sort((a, b) => a.name.localeCompare(b.name, language));
  return (
    <div className="panel-body glossary">
      <button type="button" className="link small" onClick={() => commands.go('lessons')}>
        {t(packaged ? 'school.home' : 'lessons.all')}
      </button>
      <h2>{t('glossary.title')}</h2>
      <input
        type="search"
        aria-label={t('glossary.search')}
        placeholder={t('glossary.search')}
        value={search}
        onChange={(event) => setSearch(event.currentTarget.value)}
      />
      <p className="small faint" role="status">
        {glossary === null
          ? t('lessons.loading')
          : terms.length === 0
            ? t('glossary.none')
            : t('glossary.count', { count: terms.length })}
      </p>
      <dl ref={list}>
        {terms.map((term) => (
          <TermEntry key={term.id} term={term} all={glossary?.terms ?? []} />
        ))}
      </dl>
    </div>
  );
}

function TermEntry({ term, all }: { readonly term: Term; readonly all: readonly Term[] }) {
  const { t } = useSpeech();
  const teller = useTeller();
  const links = useLinks();
  const see = term.see.flatMap((id) => all.find((each) => each.id === id) ?? []);
  return (
    <>
      <dt data-term={term.id} tabIndex={-1}>
        {term.name}
      </dt>
      <dd>
        {term.also.length > 0 && (
          <p className="small faint">{t('glossary.also', { words: term.also.join(', ') })}</p>
        )}
        <Rich rich={term.text} />
        {term.parts.length > 0 && (
          <p className="jumps small">
            <span>{t('glossary.parts')}:</span>
            {term.parts.map((part) => (
              <button key={part} type="button" className="link" onClick={() => links.showPart(part)}>
                {teller.name(part)}
              </button>
            ))}
          </p>
        )}
        {see.length > 0 && (
          <p className="jumps small">
            <span>{t('glossary.see')}:</span>
            {see.map((other) => (
              <button key={other.id} type="button" className="link" onClick={() => links.showTerm(other.id)}>
                {other.name}
              </button>
            ))}
          </p>
        )}
        {term.source !== null && <p className="small faint">{t('ask.source', { source: term.source })}</p>}
      </dd>
    </>
  );
}
