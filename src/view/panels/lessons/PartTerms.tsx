/** Words of the glossary that a part shows, for its card. The glossary is fetched when a card first asks. */
import { useEffect } from 'react';
import { partsNamed } from '../../../core/quiz';
import { createLessonCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { useLinks } from '../learn/use-links';

export default function PartTerms({ partId }: { readonly partId: string }) {
  const { t } = useSpeech();
  const links = useLinks();
  const { loadGlossary } = usePlaceCommands(createLessonCommands);
  const machine = useApp((s) => s.document?.machine);
  const glossary = useApp((s) => s.lessons.glossary);
  useEffect(() => void loadGlossary(), [loadGlossary]);
  const terms =
    machine === undefined
      ? []
      : (glossary?.terms ?? []).filter((term) =>
          term.parts.some((ref) => partsNamed(machine, ref).includes(partId)),
        );
  if (terms.length === 0) return null;
  return (
    <section>
      <h3>{t('glossary.words-here')}</h3>
      <p className="part-terms">
        {terms.map((term) => (
          <button key={term.id} type="button" className="link" onClick={() => links.showTerm(term.id)}>
            {term.name}
          </button>
        ))}
      </p>
    </section>
  );
}
