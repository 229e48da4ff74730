/** Scales and round ticks of a plot. */

export interface Scale {
  /** Value to page. */
  readonly at: (value: number) => number;
  readonly ticks: readonly number[];
}

/** Round numbers (1, 2, 5 times a power of ten) within bounds, about `count` of them. */
export function roundTicks(low: number, high: number, count: number): number[] {
  const rough = (high - low) / Math.max(1, count);
  if (!(rough > 0)) return [low];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5, 10].find((each) => each * power >= rough * 0.999) ?? 10);
  const ticks: number[] = [];
  // the 0 added turns minus zero into zero
  for (let k = Math.ceil(low / step - 1e-9); k * step <= high + step * 1e-9; k++) ticks.push(k * step + 0);
  return ticks;
}

/** Powers of ten within bounds, with 2 and 5 between them where there are few. */
export function logTicks(low: number, high: number): number[] {
  const [from, to] = [Math.floor(Math.log10(low)), Math.ceil(Math.log10(high))];
  const steps = to - from > 3 ? [1] : [1, 2, 5];
  const ticks: number[] = [];
  for (let power = from; power <= to; power++)
    for (const step of steps) {
      const tick = step * 10 ** power;
      if (tick >= low * 0.999 && tick <= high * 1.001) ticks.push(tick);
    }
  return ticks;
}

/** Bounds of a logarithmic axis: 1, 2 or 5 times a power of ten below and above. */
export function logBounds(low: number, high: number): readonly [number, number] {
  const bound = (value: number, up: boolean): number => {
    const power = 10 ** Math.floor(Math.log10(Math.max(value, 1e-12)));
    const steps = [1, 2, 5, 10].map((each) => each * power);
    return (
      (up ? steps.find((each) => each >= value * 0.999) : steps.findLast((each) => each <= value * 1.001)) ??
      power
    );
  };
  return [bound(low, false), bound(high, true)];
}

export function makeScale(
  low: number,
  high: number,
  from: number,
  to: number,
  log: boolean,
  count = 5,
): Scale {
  const span = high > low ? high - low : 1;
  if (log) {
    const [a, b] = [Math.log10(low), Math.log10(high)];
    const wide = b > a ? b - a : 1;
    return {
      at: (value) => from + ((Math.log10(Math.max(value, low)) - a) / wide) * (to - from),
      ticks: logTicks(low, high),
    };
  }
  return {
    at: (value) => from + ((value - low) / span) * (to - from),
    ticks: roundTicks(low, high, count),
  };
}
