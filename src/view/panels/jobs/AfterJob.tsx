/** After the job: measured amplitude and rate in each direction against what is expected, and the entry in the history. */
import { useId, useMemo, useState } from 'react';
import { type DirectionVerdict, judgeField, type Measured, progressShare } from '../../../core/jobs';
import { fromShown, toShown } from '../../../core/kernel';
import { createJobCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { fieldLabel, limitText, rateText, valueText } from './job-words';
import { typedNumber } from './typed-number';
import type { JobView } from './use-job';

const DIRECTIONS = ['high', 'low'] as const;

export function AfterJob({ view }: { readonly view: JobView }) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const jobs = usePlaceCommands(createJobCommands);
  const measured = useApp((s) => s.jobs.measured);
  const verdict = useMemo(() => jobs.verdict(measured), [jobs, measured]);
  const { sheet, progress } = view;
  const complete = progress !== null && progressShare(sheet, progress).complete;
  return (
    <>
      <h2>{t('jobs.after.title')}</h2>
      <p>{t('jobs.after.about')}</p>
      {verdict !== null && (
        <p className={`job-verdict ${verdict.result}`} role="status" data-verdict={verdict.result}>
          <b>{t(`jobs.result.${verdict.result}`)}</b> {t(`jobs.result.${verdict.result}.about`)}
        </p>
      )}
      {verdict?.directions.map((each) => (
        <Direction
          key={`${each.direction} ${progress?.id ?? ''}`}
          verdict={each}
          fromSheet={sheetValues(view, each.direction)}
          onChange={(value) => jobs.measure({ ...measured, [each.direction]: value })}
        />
      ))}
      <OnSheet view={view} />
      <section aria-labelledby="after-file">
        <h3 id="after-file">{t('jobs.after.file')}</h3>
        <p className="small">
          {t(
            progress === null
              ? 'jobs.after.not-begun'
              : complete
                ? 'jobs.after.complete'
                : 'jobs.after.not-complete',
          )}
        </p>
        <div className="buttons">
          <button
            type="button"
            className="button act"
            disabled={progress === null}
            onClick={() => {
              void jobs.file().then((filed) => {
                if (!filed) return;
                commands.announce('jobs.said.filed');
                commands.go('jobs', 'history');
              });
            }}
          >
            {t('jobs.after.file-now')}
          </button>
        </div>
      </section>
    </>
  );
}

/** What the sheet's own fields of this direction hold, where the job has them. */
function sheetValues({ progress }: JobView, direction: 'high' | 'low'): Partial<Measured> {
  const amplitude = progress?.values[`amplitude-${direction}`];
  const rate = progress?.values[`rate-${direction}`];
  return {
    ...(typeof amplitude === 'number' ? { amplitude_m: amplitude } : {}),
    ...(typeof rate === 'number' ? { vibrations_per_minute: (rate * 60) / (2 * Math.PI) } : {}),
  };
}

function Direction(props: {
  readonly verdict: DirectionVerdict;
  readonly fromSheet: Partial<Measured>;
  readonly onChange: (measured: Measured | null) => void;
}) {
  const { verdict, fromSheet, onChange } = props;
  const speech = useSpeech();
  const { t, quantity, units } = speech;
  const id = useId();
  const { direction, expected, check, measured } = verdict;
  const shown = (m: Partial<Measured>): [string, string] => [
    m.amplitude_m === undefined
      ? ''
      : String(Number(toShown(m.amplitude_m, 'length-small', units).toPrecision(5))),
    m.vibrations_per_minute === undefined ? '' : String(Number(m.vibrations_per_minute.toPrecision(5))),
  ];
  const [[amplitude, rate], setTyped] = useState(() => shown(measured ?? {}));
  const take = (a: string, r: string): void => {
    setTyped([a, r]);
    const found = [typedNumber(a), typedNumber(r)] as const;
    const next =
      found[0] === null || found[1] === null || found[0] <= 0 || found[1] <= 0
        ? null
        : {
            amplitude_m: fromShown(found[0], 'length-small', units),
            vibrations_per_minute: found[1],
          };
    if (next !== null || measured !== null) onChange(next);
  };
  const wrong = (text: string): boolean => text.trim() !== '' && !((typedNumber(text) ?? 0) > 0);
  const halfTyped = (amplitude.trim() === '') !== (rate.trim() === '');
  const onSheet = shown(fromSheet);
  return (
    <section aria-labelledby={`${id}-title`} data-direction={direction}>
      <h3 id={`${id}-title`}>{t(`jobs.direction.${direction}`)}</h3>
      <div className="job-fields two">
        {(
          [
            ['amplitude', amplitude, 'length-small', (text: string) => take(text, rate)],
            ['rate', rate, 'vibration-rate', (text: string) => take(amplitude, text)],
          ] as const
        ).map(([name, typed, quantityOf, onType]) => (
          <div className="job-field" key={name}>
            <label htmlFor={`${id}-${name}`}>{t(`jobs.after.${name}`)}</label>
            <span className="job-number">
              <input
                id={`${id}-${name}`}
                type="text"
                inputMode="decimal"
                className="mono"
                value={typed}
                aria-invalid={wrong(typed)}
                aria-describedby={`${id}-said`}
                onChange={(event) => onType(event.currentTarget.value)}
              />
              <span className="unit">{speech.symbol(quantityOf)}</span>
            </span>
          </div>
        ))}
      </div>
      <div id={`${id}-said`}>
        {(wrong(amplitude) || wrong(rate)) && <p className="field-wrong">{t('jobs.after.above-zero')}</p>}
        {halfTyped && <p className="small">{t('jobs.after.both')}</p>}
        {(onSheet[0] !== '' || onSheet[1] !== '') && amplitude === '' && rate === '' && (
          <button type="button" className="link" onClick={() => take(onSheet[0], onSheet[1])}>
            {t('jobs.after.from-sheet')}
          </button>
        )}
        {expected !== null && (
          <p className="small">
            {t('jobs.after.expected', {
              amplitude: quantity(expected.amplitude_m, 'length-small', 3),
              rate: rateText(speech, expected.vibrations_per_minute),
            })}
          </p>
        )}
        {check !== null && (
          <ul className="plain-list">
            <li>
              <b>{t(`jobs.after.amplitude-${check.amplitude}`)}</b>{' '}
              <span className="mono small">
                {t('jobs.after.band', {
                  from: speech.number(check.amplitude_from_m, 'length-small', 3),
                  to: quantity(check.amplitude_to_m, 'length-small', 3),
                  share: quantity(check.amplitude_ratio, 'share', 3),
                })}
              </span>
            </li>
            <li>
              <b>{t(`jobs.after.rate-${check.rate}`)}</b>{' '}
              <span className="mono small">
                {t('jobs.after.band', {
                  from: speech.number(check.rate_from / 60, 'vibration-rate'),
                  to: rateText(speech, check.rate_to),
                  share: quantity(check.rate_ratio, 'share', 3),
                })}
              </span>
            </li>
          </ul>
        )}
        {verdict.notes.map((note, i) => (
          <p key={i} className="small">
            {speech.say(note)}
          </p>
        ))}
      </div>
    </section>
  );
}

/** Numbers that the sheet holds, with their limits: oil, temperatures, gaps. */
function OnSheet({ view }: { readonly view: JobView }) {
  const speech = useSpeech();
  const { t } = speech;
  const { sheet, progress, machine } = view;
  const filled = sheet.fields.filter(
    (f) => f.type === 'number' && progress?.values[f.id] !== undefined && !DIRECTION_FIELD.test(f.id),
  );
  if (filled.length === 0) return null;
  return (
    <section aria-labelledby="after-sheet">
      <h3 id="after-sheet">{t('jobs.after.on-sheet')}</h3>
      <table className="job-table">
        <thead>
          <tr>
            <th scope="col">{t('jobs.after.what')}</th>
            <th scope="col">{t('jobs.after.measured')}</th>
            <th scope="col">{t('jobs.after.limits')}</th>
          </tr>
        </thead>
        <tbody>
          {filled.map((field) => {
            const value = progress?.values[field.id];
            const verdict = judgeField(field, value);
            return (
              <tr key={field.id}>
                <td>{fieldLabel(speech, machine, field)}</td>
                <td className="mono">{valueText(speech, field, value)}</td>
                <td>
                  <span className="mono">{limitText(speech, field) ?? '–'}</span>
                  {(field.min !== null || field.max !== null) && (
                    <span className={`verdict ${verdict}`}> {t(`jobs.verdict.${verdict}`)}</span>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </section>
  );
}

const DIRECTION_FIELD = new RegExp(`^(amplitude|rate)-(${DIRECTIONS.join('|')})$`);
