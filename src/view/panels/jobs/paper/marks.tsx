/** Marks of a printed form: a line to write on, a box to tick, a caution with its signal word. */
import type { SheetCaution } from '../../../../core/jobs';
import { useSpeech } from '../../../bind';
import { cautionText } from '../job-words';

export const Blank = ({ short = false }: { readonly short?: boolean }) => (
  <span className={short ? 'blank short' : 'blank'} />
);

/** A square; with a tick in it where the step or answer is done. */
export function Box({ ticked = false }: { readonly ticked?: boolean }) {
  return (
    <svg className="box" viewBox="0 0 16 16" aria-hidden="true">
      <rect x="1" y="1" width="14" height="14" fill="#fff" stroke="#000" strokeWidth="1.4" />
      {ticked && <path d="m3.5 8.5 3 3.5 6-8" fill="none" stroke="#000" strokeWidth="2.2" />}
    </svg>
  );
}

const AlertMark = () => (
  <svg viewBox="0 0 18 16" aria-hidden="true">
    <path d="M9 .8 17.4 15.2H.6Z" fill="#000" />
    <path d="M8 5.2h2l-.3 5H8.3Z M8.1 11.4h1.8v1.8H8.1Z" fill="#fff" />
  </svg>
);

/** Black on white: DANGER, WARNING and CAUTION carry the alert mark, NOTICE does not (ANSI Z535.6). */
export function Caution({ caution }: { readonly caution: SheetCaution }) {
  const speech = useSpeech();
  return (
    <div className={`paper-caution ${caution.signal}`}>
      <b>
        {caution.signal !== 'notice' && <AlertMark />}
        {speech.t(`signal.${caution.signal}`)}
      </b>
      <span>{cautionText(speech, caution)}</span>
    </div>
  );
}

/** Cautions whose words stand in full a step or two before: their signal words, and where. */
export function CautionsAgain(props: { readonly cautions: readonly SheetCaution[]; readonly step: number }) {
  const { t } = useSpeech();
  return (
    <p className="paper-again">
      {props.cautions.map((caution, i) => (
        <b key={i}>
          {caution.signal !== 'notice' && <AlertMark />} {t(`signal.${caution.signal}`)}
        </b>
      ))}
      <span>{t('jobs.paper.as-at', { step: props.step })}</span>
    </p>
  );
}
