/** Play, pause, scrub; how slow; and where the eye stands. Space plays, arrow keys on the slider step. */
import type { CSSProperties } from 'react';
import { type ShotRun, type ShotState, SLOW_FACTORS } from '../../../store';
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { trackShare } from '../common/RangeField';
import { Segmented } from '../common/Segmented';
import { useMoment } from './use-moment';

export function ShotTransport({ run }: { readonly run: ShotRun }) {
  const { t, number } = useSpeech();
  const commands = useCommands();
  const playing = useApp((s) => s.shot.playing);
  const slow = useApp((s) => s.shot.slow);
  const eye = useApp((s) => s.shot.eye);
  const along = useApp((s) => s.shot.along);
  const time_s = useMoment(run.take, 50)?.time_s ?? 0;
  const { duration_s } = run.take;
  const fixed = (s: number): string => s.toFixed(2);
  const label = t(playing ? 'shot.pause' : time_s >= duration_s ? 'shot.again' : 'shot.play');
  const text = t('shot.time', { time: fixed(time_s), of: fixed(duration_s) });
  const style = { '--at': trackShare(time_s, 0, duration_s) } as CSSProperties;
  return (
    <div className="shot-transport" role="group" aria-label={t('shot.transport')}>
      <div className="shot-play">
        <button
          type="button"
          className="button act icon"
          aria-label={label}
          title={label}
          onClick={() => commands.playShot(!playing)}
        >
          <Icon name={playing ? 'pause' : 'play'} size={24} />
        </button>
        <input
          type="range"
          min={0}
          max={duration_s}
          step={0.01}
          value={time_s}
          aria-label={t('shot.scrub')}
          aria-valuetext={text}
          style={style}
          onChange={(event) => commands.scrubShot(event.currentTarget.valueAsNumber)}
          onKeyDown={(event) => {
            if (event.key !== ' ') return;
            event.preventDefault();
            commands.playShot(!playing);
          }}
        />
        <output className="mono small" aria-hidden="true">
          {text}
        </output>
      </div>
      <div className="shot-ways">
        <Segmented
          legend={t('shot.slow')}
          choices={SLOW_FACTORS.map((factor) => ({
            value: String(factor),
            label:
              factor === 1 ? t('shot.slow-none') : t('shot.slow-by', { factor: number(factor, 'plain') }),
          }))}
          value={String(slow)}
          onChange={(value) => commands.setShot({ slow: Number(value) })}
        />
        <Segmented<ShotState['eye']>
          legend={t('shot.eye')}
          choices={[
            { value: 'housing', label: t('shot.eye-housing') },
            { value: 'room', label: t('shot.eye-room') },
          ]}
          value={eye}
          onChange={(value) => commands.setShot({ eye: value })}
        />
        <Segmented<ShotState['along']>
          legend={t('shot.along')}
          choices={[
            { value: 'repeated', label: t('shot.along-repeated') },
            { value: 'alone', label: t('shot.along-alone') },
          ]}
          value={along}
          onChange={(value) => commands.setShot({ along: value })}
        />
      </div>
    </div>
  );
}
