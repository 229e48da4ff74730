/** Numbers of both directions side by side, with low as a share of high. */
import type { DirectionStudy, ExciterBand, ExciterReading, ExciterStudy } from '../../../core/studies';
import type { Quantity } from '../../../core/kernel';
import type { SpinDirection } from '../../../store';
import { useSpeech } from '../../bind';

interface Line {
  readonly word: string;
  readonly quantity: Quantity;
  readonly of: (value: ExciterReading | null, d: DirectionStudy) => number | null;
  /** Half width of the band about it. */
  readonly band?: (band: ExciterBand) => number | null;
  /** Ratio low / high is worth showing. */
  readonly ratio?: boolean;
  readonly strong?: boolean;
  readonly figures?: number;
}

const DEGREE = Math.PI / 180;

const LINES: readonly Line[] = [
  {
    word: 'unbalance',
    quantity: 'unbalance',
    of: (v) => v?.U_kgm ?? null,
    band: (b) => b.U_kgm,
    ratio: true,
    strong: true,
  },
  {
    word: 'force',
    quantity: 'force-large',
    of: (v) => v?.force_N ?? null,
    band: (b) => b.force_N,
    ratio: true,
    strong: true,
  },
  {
    word: 'amplitude',
    quantity: 'length-small',
    of: (v) => v?.nominalAmplitude_m ?? null,
    band: (b) => b.nominalAmplitude_m,
    ratio: true,
    strong: true,
    figures: 3,
  },
  { word: 'level-unbalance', quantity: 'unbalance', of: (_, d) => d.level.U_kgm },
  { word: 'level-force', quantity: 'force-large', of: (_, d) => d.level.force_N },
  { word: 'frequency', quantity: 'frequency', of: (_, d) => d.frequency_Hz, ratio: true },
  {
    word: 'captured',
    quantity: 'share',
    of: (v) => v?.captured ?? null,
    band: (b) => b.captured,
  },
  { word: 'shot-moment', quantity: 'unbalance', of: (v) => v?.shot_U_kgm ?? null, ratio: true },
  { word: 'housing-moment', quantity: 'unbalance', of: (_, d) => Math.hypot(...d.housing_kgm) },
  {
    word: 'angle',
    quantity: 'angle',
    of: (v) => (v === null || v.angle_deg === null ? null : v.angle_deg * DEGREE),
  },
  { word: 'bearing-left', quantity: 'force-large', of: (v) => v?.bearing_left_N ?? null, ratio: true },
  { word: 'bearing-right', quantity: 'force-large', of: (v) => v?.bearing_right_N ?? null, ratio: true },
];

export function ExciterTable(props: { readonly study: ExciterStudy; readonly direction: SpinDirection }) {
  const { t, number, symbol, language } = useSpeech();
  const ratio = new Intl.NumberFormat(language, { minimumFractionDigits: 2, maximumFractionDigits: 2 });
  const { study, direction } = props;
  const column = (which: SpinDirection): string => (which === direction ? 'number mono now' : 'number mono');
  const ratioOf = (line: Line): string => {
    const high = line.of(study.high.value, study.high);
    const low = line.of(study.low.value, study.low);
    return line.ratio === true && high !== null && low !== null && high !== 0 ? ratio.format(low / high) : '';
  };
  const cell = (line: Line, which: SpinDirection) => {
    const d = study[which];
    const band =
      d.surface === 'settled' && d.simulated !== null ? (line.band?.(d.simulated.band) ?? null) : null;
    return (
      <td className={column(which)}>
        <span data-testid={`${line.word}-${which}`}>
          {number(line.of(d.value, d), line.quantity, line.figures)}
        </span>
        {band !== null && (
          <small className="band" data-testid={`${line.word}-${which}-band`}>
            {`± ${number(band, line.quantity, 2)}`}
          </small>
        )}
      </td>
    );
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
        <tr>
          <th scope="row">{t('exciter.from')}</th>
          <td className="number" data-testid="from-high">
            {t(`exciter.from-${study.high.surface}`)}
          </td>
          <td className="number" data-testid="from-low">
            {t(`exciter.from-${study.low.surface}`)}
          </td>
          <td />
        </tr>
        {LINES.map((line) => (
          <tr key={line.word} className={line.strong === true ? 'strong' : ''}>
            <th scope="row">
              {t(`exciter.${line.word}`)} <span className="unit">{symbol(line.quantity)}</span>
            </th>
            {cell(line, 'high')}
            {cell(line, 'low')}
            <td className="number mono faint">{ratioOf(line)}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">
            {t('exciter.vpm')} <span className="unit">{symbol('vibration-rate')}</span>
          </th>
          <td className={column('high')}>{number(study.high.frequency_Hz, 'vibration-rate', 4)}</td>
          <td className={column('low')}>{number(study.low.frequency_Hz, 'vibration-rate', 4)}</td>
          <td />
        </tr>
      </tbody>
    </table>
  );
}
