/** One field of a step, in the person's units, with what is wrong said beside it. The sheet keeps SI numbers only. */
import { useId, useState } from 'react';
import { judgeField, type SheetField } from '../../../core/jobs';
import { createJobCommands } from '../../../store';
import { usePlaceCommands, useSpeech } from '../../bind';
import { asksManual, fieldLabel, fieldShown, fieldSymbol, fieldValue, limitText, ownText } from './job-words';
import type { JobView } from './use-job';

interface Props {
  readonly view: JobView;
  readonly field: SheetField;
  readonly hold: boolean;
}

export function FieldInput({ view, field, hold }: Props) {
  const speech = useSpeech();
  const { t } = speech;
  const jobs = usePlaceCommands(createJobCommands);
  const id = useId();
  const value = view.progress?.values[field.id];
  const label = fieldLabel(speech, view.machine, field);
  const [wrong, setWrong] = useState(false);
  const verdict = judgeField(field, value);
  const limits = limitText(speech, field);
  const required = hold && !field.optional;
  const message = wrong
    ? t('jobs.field.no-number')
    : verdict === 'bad'
      ? field.type === 'check'
        ? t('jobs.field.no')
        : t(limits === null ? 'jobs.field.not-good' : 'jobs.field.outside', { limits: limits ?? '' })
      : '';
  const about = [
    limits === null ? '' : t('jobs.field.limits', { limits }),
    field.source === null || field.fromManual ? '' : speech.say(field.source),
  ].filter((part) => part !== '');
  const described = { 'aria-describedby': `${id}-about`, 'aria-invalid': wrong || verdict === 'bad' };
  const name = (
    <>
      {label}
      {required && <span className="faint"> {t('jobs.field.needed')}</span>}
    </>
  );
  return (
    <div className="job-field" data-field={field.id} data-state={wrong ? 'wrong' : verdict}>
      {field.type === 'check' ? (
        <label className="check">
          <input
            type="checkbox"
            checked={value === true}
            {...described}
            onChange={(event) => jobs.fill(field.id, event.currentTarget.checked ? true : null)}
          />
          <span>{name}</span>
        </label>
      ) : (
        <label htmlFor={id}>{name}</label>
      )}
      {field.type === 'number' && (
        <NumberInput id={id} view={view} field={field} described={described} onWrong={setWrong} />
      )}
      {field.type === 'text' && (
        <input
          id={id}
          type="text"
          value={typeof value === 'string' ? value : ''}
          {...described}
          onChange={(event) =>
            jobs.fill(field.id, event.currentTarget.value === '' ? null : event.currentTarget.value)
          }
        />
      )}
      {field.type === 'choice' && (
        <select
          id={id}
          value={typeof value === 'string' ? value : ''}
          {...described}
          onChange={(event) =>
            jobs.fill(field.id, event.currentTarget.value === '' ? null : event.currentTarget.value)
          }
        >
          <option value="">{t('jobs.field.choose')}</option>
          {field.choices.map((choice) => (
            <option key={choice.id} value={choice.id}>
              {ownText(speech, choice.label)}
            </option>
          ))}
        </select>
      )}
      <div id={`${id}-about`} className="small">
        {asksManual(field) && <p className="from-manual">{t('jobs.from-manual')}</p>}
        {about.length > 0 && <p className="faint">{about.join('. ')}</p>}
        {message !== '' && <p className="field-wrong">{message}</p>}
      </div>
    </div>
  );
}

/** What is typed stays as typed while it is no number; the sheet then has none. */
function NumberInput(props: {
  readonly id: string;
  readonly view: JobView;
  readonly field: SheetField;
  readonly described: { readonly 'aria-describedby': string; readonly 'aria-invalid': boolean };
  readonly onWrong: (wrong: boolean) => void;
}) {
  const { id, view, field, described, onWrong } = props;
  const speech = useSpeech();
  const jobs = usePlaceCommands(createJobCommands);
  const [draft, setDraft] = useState<string | null>(null);
  const value = view.progress?.values[field.id];
  const shown = typeof value === 'number' ? fieldShown(speech, field, value) : '';
  const take = (text: string): void => {
    setDraft(text);
    const si = fieldValue(speech, field, text);
    onWrong(si === null && text.trim() !== '');
    jobs.fill(field.id, si);
  };
  return (
    <span className="job-number">
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        className="mono"
        value={draft ?? shown}
        {...described}
        onChange={(event) => take(event.currentTarget.value)}
        onBlur={() => {
          // a number is then shown as the sheet keeps it; what is no number stays to be put right
          if (draft !== null && (draft.trim() === '' || fieldValue(speech, field, draft) !== null))
            setDraft(null);
        }}
      />
      <span className="unit">{fieldSymbol(speech, field)}</span>
    </span>
  );
}
