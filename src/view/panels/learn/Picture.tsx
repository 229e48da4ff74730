/** Pictures and plots that a question asks to be read, drawn from the model. */
import { useMemo } from 'react';
import { type PictureSetting, plotCurve, type PlotName } from '../../../core/quiz';
import { exciterStudy, OWN_CHOICE } from '../../../core/studies';
import { selectSubject } from '../../../store';
import { useApp, useSpeech } from '../../bind';
import { ExciterDrawing } from '../exciter/ExciterDrawing';
import '../exciter/exciter.css';
import { Plot } from '../studies/Plot';
import '../studies/studies.css';

const LETTERS = 'ABCDE';

export function Picture({ picture }: { readonly picture: PictureSetting }) {
  return picture.type === 'plot' ? <CurvePlot plot={picture.plot} /> : <ExciterPicture picture={picture} />;
}

type ExciterSetting = Extract<PictureSetting, { type: 'exciter' }>;

/** The machine's own exciter with what the question changes in it, whatever is set on the stage. */
function ExciterPicture({ picture }: { readonly picture: ExciterSetting }) {
  const { t } = useSpeech();
  const subject = useApp(selectSubject);
  const { direction, fill = null, baffle_on: baffleOn = true } = picture;
  const study = useMemo(() => {
    if (subject === null) return null;
    const { machine, solids, masses, fit } = subject;
    return exciterStudy(machine, solids, masses, { ...OWN_CHOICE, fill, baffleOn }, fit);
  }, [subject, fill, baffleOn]);
  if (study === null) return <p className="faint">{t('ask.no-picture')}</p>;
  return (
    <figure className="ask-picture">
      <ExciterDrawing study={study} direction={direction} />
    </figure>
  );
}

function CurvePlot({ plot }: { readonly plot: PlotName }) {
  const { t } = useSpeech();
  const subject = useApp(selectSubject);
  const curve = useMemo(() => (subject === null ? null : plotCurve(subject, plot)), [subject, plot]);
  if (curve === null) return <p className="faint">{t('ask.no-picture')}</p>;
  const { x, y, lines, mark } = curve;
  return (
    <Plot
      title={t(`ask.plot.${plot}`)}
      file={plot}
      downwards={x.downwards ?? false}
      x={{ name: t(`ask.plot.${plot}.x`), key: x.key, quantity: x.quantity, values: x.values }}
      y={{ name: t(`ask.plot.${plot}.y`), key: y.key, quantity: y.quantity, low: 0 }}
      lines={lines.map((values, i) => ({
        name: LETTERS[i] ?? '',
        key: `${y.key}_${LETTERS[i]?.toLowerCase() ?? ''}`,
        values,
      }))}
      {...(mark === undefined ? {} : { marks: [{ at: mark, name: t(`ask.plot.${plot}.mark`) }] })}
    />
  );
}
