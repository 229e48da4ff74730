/** The exciter: which way it spins, where the shot settles, and how hard that shakes the drum. */
import type { SpinDirection } from '../../../store';
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { Segmented } from '../common/Segmented';
import { Signal } from '../common/Signal';
import { ShotWatch } from '../shot/ShotWatch';
import { ExciterControls } from './ExciterControls';
import { ExciterDrawing } from './ExciterDrawing';
import { ExciterTable } from './ExciterTable';
import { SurfaceNote } from './SurfaceNote';
import { useExciterStudy } from './use-exciter-study';
import './exciter.css';

/** LOW turns positive about machine +x, which is counter-clockwise seen from the machine's right. */
const TURN: Readonly<Record<SpinDirection, string>> = { high: 'turn-cw', low: 'turn-ccw' };

/** Notes for a calculation's reader; the drawing shows an empty pocket by itself. */
const SHOWN_ANYWAY = ['mechanics.unbalance.pocket-empty', 'mechanics.unbalance.main-empty'];

const sentence = (text: string): string => `${text.charAt(0).toLocaleUpperCase()}${text.slice(1)}.`;

export function ExciterPanel() {
  const { t, quantity, say } = useSpeech();
  const commands = useCommands();
  const direction = useApp((s) => s.exciter.direction);
  const watching = useApp((s) => s.shot.open);
  const study = useExciterStudy();
  const notes = (study?.[direction].notes ?? []).filter((note) => !SHOWN_ANYWAY.includes(note.key));
  const choice = (value: SpinDirection) => ({
    value,
    label: (
      <span className="direction">
        <Icon name={TURN[value]} size={22} />
        <span>
          <b>{t(`exciter.${value}`)}</b>
          <small>
            {study !== null &&
              (study[value].value === null
                ? t('exciter.from-unknown')
                : quantity(study[value].value.U_kgm, 'unbalance'))}
          </small>
        </span>
      </span>
    ),
  });
  return (
    <div className="panel-body exciter">
      <Segmented
        legend={t('exciter.direction')}
        className="direction-switch"
        fill
        choices={[choice('high'), choice('low')]}
        value={direction}
        onChange={(next) => commands.setExciter({ direction: next })}
      />
      {study === null ? (
        <p className="faint">{t('exciter.none')}</p>
      ) : (
        <>
          <Segmented
            legend={t('shot.drawing-choice')}
            legendHidden
            fill
            choices={[
              { value: 'settled', label: t('shot.settled') },
              { value: 'watch', label: t('shot.title') },
            ]}
            value={watching ? 'watch' : 'settled'}
            onChange={(value) => commands.watchShot(value === 'watch')}
          />
          {watching ? <ShotWatch study={study} /> : <ExciterDrawing study={study} direction={direction} />}
          <ExciterTable study={study} direction={direction} />
          <SurfaceNote study={study[direction]} direction={direction} />
          {notes.length > 0 && (
            <ul className="notes small">
              {notes.map((note) => (
                <li key={note.key}>{sentence(say(note))}</li>
              ))}
            </ul>
          )}
          <Signal word="notice">
            <p>{t('exciter.notice')}</p>
          </Signal>
          {!watching && <ExciterControls study={study} />}
          <p className="small faint">
            {t('exciter.mass-note', {
              vibrating: quantity(study.vibratingMass_kg, 'mass', 4),
              shot: quantity(study.shotMass_kg, 'mass'),
            })}
          </p>
        </>
      )}
    </div>
  );
}
