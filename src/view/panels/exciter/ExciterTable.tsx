/** Numbers of both directions side by side, with low as a share of high. */
import type { DirectionStudy, ExciterStudy } from '../../../core/studies';
import type { Quantity } from '../../../core/kernel';
import type { SpinDirection } from '../../../store';
import { useSpeech } from '../../bind';

interface Line {
  readonly word: string;
  readonly quantity: Quantity;
  readonly of: (d: DirectionStudy) => number | null;
  /** Ratio low / high is worth showing. */
  readonly ratio?: boolean;
  readonly strong?: boolean;
  readonly figures?: number;
}

const DEGREE = Math.PI / 180;

const LINES: readonly Line[] = [
  { word: 'unbalance', quantity: 'unbalance', of: (d) => d.U_kgm, ratio: true, strong: true },
  { word: 'force', quantity: 'force-large', of: (d) => d.force_N, ratio: true, strong: true },
  {
    word: 'amplitude',
    quantity: 'length-small',
    of: (d) => d.nominalAmplitude_m,
    ratio: true,
    strong: true,
    figures: 3,
  },
  { word: 'frequency', quantity: 'frequency', of: (d) => d.frequency_Hz, ratio: true },
  { word: 'captured', quantity: 'share', of: (d) => d.captured },
  { word: 'shot-moment', quantity: 'unbalance', of: (d) => d.shot_U_kgm, ratio: true },
  { word: 'housing-moment', quantity: 'unbalance', of: (d) => Math.hypot(...d.housing_kgm) },
  { word: 'angle', quantity: 'angle', of: (d) => (d.angle_deg === null ? null : d.angle_deg * DEGREE) },
  { word: 'bearing-left', quantity: 'force-large', of: (d) => d.bearing_left_N, ratio: true },
  { word: 'bearing-right', quantity: 'force-large', of: (d) => d.bearing_right_N, ratio: true },
];

export function ExciterTable(props: { readonly study: ExciterStudy; readonly direction: SpinDirection }) {
  const { t, number, symbol, language } = useSpeech();
  const ratio = new Intl.NumberFormat(language, { minimumFractionDigits: 2, maximumFractionDigits: 2 });
  const { study, direction } = props;
  const column = (which: SpinDirection): string => (which === direction ? 'number mono now' : 'number mono');
  const ratioOf = (line: Line): string => {
    const high = line.of(study.high);
    const low = line.of(study.low);
    return line.ratio === true && high !== null && low !== null && high !== 0 ? ratio.format(low / high) : '';
  };
  return (
    <table className="exciter-table" aria-label={t('exciter.table')}>
      <thead>
        <tr>
          <td />
          <th scope="col" className={direction === 'high' ? 'now' : ''}>
            {t('exciter.high')}
          </th>
          <th scope="col" className={direction === 'low' ? 'now' : ''}>
            {t('exciter.low')}
          </th>
          <th scope="col" title={t('exciter.ratio-long')}>
            {t('exciter.ratio')}
          </th>
        </tr>
      </thead>
      <tbody>
        {LINES.map((line) => (
          <tr key={line.word} className={line.strong === true ? 'strong' : ''}>
            <th scope="row">
              {t(`exciter.${line.word}`)} <span className="unit">{symbol(line.quantity)}</span>
            </th>
            <td className={column('high')} data-testid={`${line.word}-high`}>
              {number(line.of(study.high), line.quantity, line.figures)}
            </td>
            <td className={column('low')} data-testid={`${line.word}-low`}>
              {number(line.of(study.low), line.quantity, line.figures)}
            </td>
            <td className="number mono faint">{ratioOf(line)}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">
            {t('exciter.vpm')} <span className="unit">vpm</span>
          </th>
          <td className={column('high')}>{number(study.high.frequency_Hz * 60, 'count', 4)}</td>
          <td className={column('low')}>{number(study.low.frequency_Hz * 60, 'count', 4)}</td>
          <td />
        </tr>
      </tbody>
    </table>
  );
}
