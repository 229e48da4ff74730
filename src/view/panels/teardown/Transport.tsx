/** Play, step and scrub through the teardown, forwards and back. */
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { RangeField } from '../common/RangeField';
import { Segmented } from '../common/Segmented';
import { stepTitle } from './step-words';

export function Transport() {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const document = useApp((s) => s.document);
  const { step, playing, reverse } = useApp((s) => s.teardown);
  const steps = document?.teardown.steps ?? [];
  const now = steps[step];
  const play = (): void => {
    const atEnd = reverse ? step < 0 : step >= steps.length - 1;
    if (!playing && atEnd) commands.goToStep(reverse ? steps.length - 1 : -1);
    commands.setPlaying(!playing, reverse);
  };
  return (
    <div className="transport">
      <div className="transport-keys" role="group" aria-label={t('teardown.transport')}>
        <button
          type="button"
          className="button icon"
          aria-label={t('teardown.back')}
          title={t('teardown.back')}
          disabled={step < 0}
          onClick={() => commands.goToStep(step - 1, { playing: false })}
        >
          <Icon name="back" />
        </button>
        <button
          type="button"
          className="button act icon play"
          aria-label={t(playing ? 'teardown.pause' : reverse ? 'teardown.play-reverse' : 'teardown.play')}
          title={t(playing ? 'teardown.pause' : 'teardown.play')}
          disabled={steps.length === 0}
          onClick={play}
        >
          <Icon name={playing ? 'pause' : reverse ? 'play-back' : 'play'} size={24} />
        </button>
        <button
          type="button"
          className="button icon"
          aria-label={t('teardown.next')}
          title={t('teardown.next')}
          disabled={step >= steps.length - 1}
          onClick={() => commands.goToStep(step + 1, { playing: false })}
        >
          <Icon name="next" />
        </button>
      </div>
      <div className="scrub">
        <RangeField
          label={t('teardown.scrub')}
          bare
          value={step}
          min={-1}
          max={Math.max(0, steps.length - 1)}
          step={1}
          text={
            now === undefined || document === null
              ? t('teardown.assembled')
              : t('teardown.scrub-value', {
                  step: step + 1,
                  steps: steps.length,
                  name: stepTitle(speech, document.machine, now),
                })
          }
          onChange={(value) => commands.goToStep(value, { playing: false })}
        />
      </div>
      <Segmented
        legend={t('teardown.direction')}
        legendHidden
        choices={[
          { value: 'apart', label: t('teardown.apart') },
          { value: 'together', label: t('teardown.together') },
        ]}
        value={reverse ? 'together' : 'apart'}
        onChange={(way) => commands.goToStep(step, { reverse: way === 'together' })}
      />
    </div>
  );
}
