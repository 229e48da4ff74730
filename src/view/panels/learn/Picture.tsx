/** Pictures and plots that a question asks to be read, drawn from the model. */
import { useMemo } from 'react';
import type { PictureSetting } from '../../../core/quiz';
import { type ExciterStudy } from '../../../core/studies';
import { useSpeech } from '../../bind';
import { ExciterDrawing } from '../exciter/ExciterDrawing';
import { useExciterStudy } from '../exciter/use-exciter-study';
import { Plot } from '../studies/Plot';

const FREQUENCIES_Hz = Array.from({ length: 41 }, (_, i) => i);

export function Picture({ picture }: { readonly picture: PictureSetting }) {
  const { t } = useSpeech();
  const study = useExciterStudy();
  if (study === null) return <p className="faint">{t('ask.no-picture')}</p>;
  if (picture.type === 'exciter')
    return (
      <figure className="ask-picture">
        <ExciterDrawing study={study} direction={picture.direction} />
      </figure>
    );
  return <ForcePlot study={study} />;
}

/** Centrifugal force over frequency, one line a range: U (2 pi f)^2. */
function ForcePlot({ study }: { readonly study: ExciterStudy }) {
  const { t } = useSpeech();
  const lines = useMemo(
    () =>
      (['high', 'low'] as const).map((direction, i) => {
        const U_kgm = study[direction].value?.U_kgm;
        return {
          name: `${'AB'[i]}`,
          key: `force_${'ab'[i]}_N`,
          values: FREQUENCIES_Hz.map((f) => (U_kgm === undefined ? null : U_kgm * (2 * Math.PI * f) ** 2)),
        };
      }),
    [study],
  );
  return (
    <Plot
      title={t('ask.plot-force')}
      file="force-over-frequency"
      x={{
        name: t('ask.plot-frequency'),
        key: 'frequency_Hz',
        quantity: 'frequency',
        values: FREQUENCIES_Hz,
      }}
      y={{ name: t('ask.plot-force-axis'), key: 'force_N', quantity: 'force-large', low: 0 }}
      lines={lines}
    />
  );
}
