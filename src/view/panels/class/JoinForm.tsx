/** Joining: the class code, the number on the class sheet, and a name where the instructor asks for names. */
import { useId, useState } from 'react';
import { type ClassGreeting, CODE_LENGTH, MOST_LETTERS_OF_NAME, tidyCode } from '../../../core/classroom';
import { createClassCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { LinkLine } from './LinkLine';

export function JoinForm({ greeting }: { readonly greeting: ClassGreeting }) {
  const { t } = useSpeech();
  const room = usePlaceCommands(createClassCommands);
  const id = useId();
  const inAddress = useApp((s) => s.route.path[0] ?? '');
  const waiting = useApp((s) => s.class.role === 'learner' && s.class.link !== 'open');
  const kept = room.keptSeat();
  const [code, setCode] = useState(inAddress !== '' ? inAddress : (kept?.code ?? ''));
  const [seat, setSeat] = useState(kept === null ? '' : String(kept.seat));
  const [name, setName] = useState(kept?.name ?? '');
  const { settings } = greeting;
  const number = Number(seat);
  const complete =
    tidyCode(code).length === CODE_LENGTH && Number.isInteger(number) && number >= 1 && number <= 300;
  return (
    <form
      className="panel-body class-join"
      onSubmit={(event) => {
        event.preventDefault();
        const given = name.trim();
        if (complete) void room.join(code, number, settings.names && given !== '' ? given : null);
      }}
    >
      <h2>{t('class.join-title')}</h2>
      {settings.title !== '' && <p>{settings.title}</p>}
      <div>
        <label htmlFor={`${id}-code`} className="field-name">
          {t('class.code')}
        </label>
        <input
          id={`${id}-code`}
          className="text-field mono"
          value={code}
          onChange={(event) => setCode(event.currentTarget.value)}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          maxLength={12}
          required
        />
      </div>
      <div>
        <label htmlFor={`${id}-seat`} className="field-name">
          {t(settings.mode === 'team' ? 'class.team-number' : 'class.roster-number')}
        </label>
        <input
          id={`${id}-seat`}
          className="text-field mono"
          inputMode="numeric"
          pattern="[0-9]*"
          value={seat}
          onChange={(event) => setSeat(event.currentTarget.value)}
          autoComplete="off"
          maxLength={3}
          required
        />
        <p className="small faint">
          {t(settings.mode === 'team' ? 'class.team-number-about' : 'class.roster-number-about')}
        </p>
      </div>
      {settings.names && (
        <div>
          <label htmlFor={`${id}-name`} className="field-name">
            {t('class.name')}
          </label>
          <input
            id={`${id}-name`}
            className="text-field"
            value={name}
            onChange={(event) => setName(event.currentTarget.value)}
            autoComplete="off"
            maxLength={MOST_LETTERS_OF_NAME}
          />
          <p className="small faint">{t('class.name-about')}</p>
        </div>
      )}
      {waiting ? <LinkLine /> : <Refused />}
      <button type="submit" className="button act" disabled={!complete}>
        {t('class.join')}
      </button>
      <p className="small faint">{t('class.join-private')}</p>
    </form>
  );
}

function Refused() {
  const { say } = useSpeech();
  const refused = useApp((s) => s.class.refused);
  if (refused === null) return null;
  return (
    <p className="class-refused" role="alert">
      {say(refused)}
    </p>
  );
}
