/** Pieces of every study's panel: its numbers, what it takes for granted, where it ends, what it was checked against. */
import type { ReactNode } from 'react';
import type { Message } from '../../../core/kernel';
import type { SpinDirection } from '../../../store';
import { useSpeech } from '../../bind';
import { Segmented } from '../common/Segmented';

export interface NumberRow {
  readonly name: string;
  readonly value: ReactNode;
  /** Name for tests and scripts. */
  readonly id?: string;
  /** SI value beside it, for scripts. */
  readonly si?: number | null;
}

export function NumberRows({
  rows,
  caption,
}: {
  readonly rows: readonly NumberRow[];
  readonly caption: string;
}) {
  return (
    <dl className="facts study-numbers" aria-label={caption}>
      {rows.map((row) => (
        <NumberLine key={row.name} row={row} />
      ))}
    </dl>
  );
}

function NumberLine({ row }: { readonly row: NumberRow }) {
  return (
    <>
      <dt>{row.name}</dt>
      <dd className="mono" data-testid={row.id} data-si={row.si ?? undefined}>
        {row.value}
      </dd>
    </>
  );
}

interface NotesProps {
  readonly assumptions: readonly Message[];
  readonly limits: readonly Message[];
  /** Key of the sentence that says what the formulas were checked against. */
  readonly checked: string;
}

export function StudyNotes({ assumptions, limits, checked }: NotesProps) {
  const { t, say } = useSpeech();
  return (
    <section className="study-notes small" aria-label={t('studies.notes')}>
      <h3>{t('studies.limits')}</h3>
      <ul>
        {limits.map((each) => (
          <li key={each.key}>{say(each)}</li>
        ))}
      </ul>
      <h3>{t('studies.assumptions')}</h3>
      <ul>
        {assumptions.map((each) => (
          <li key={each.key}>{say(each)}</li>
        ))}
      </ul>
      <h3>{t('studies.checked')}</h3>
      <p>{t(checked)}</p>
    </section>
  );
}

export function DirectionChoice(props: {
  readonly value: SpinDirection;
  readonly onChange: (value: SpinDirection) => void;
}) {
  const { t } = useSpeech();
  return (
    <Segmented<SpinDirection>
      legend={t('exciter.direction')}
      fill
      choices={[
        { value: 'high', label: t('exciter.high') },
        { value: 'low', label: t('exciter.low') },
      ]}
      value={props.value}
      onChange={props.onChange}
    />
  );
}

/** Shown where the exciter's study cannot tell the unbalance of what is set. */
export function UnknownUnbalance() {
  const { t } = useSpeech();
  return <p className="limit">{t('studies.unknown-unbalance')}</p>;
}
