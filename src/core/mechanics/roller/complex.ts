/** Complex numbers as pairs, for steady vibration: z stands for Re(z e^(i w t)). */
export interface Complex {
  readonly re: number;
  readonly im: number;
}

export const complex = (re: number, im = 0): Complex => ({ re, im });
export const plus = (a: Complex, b: Complex): Complex => complex(a.re + b.re, a.im + b.im);
export const minus = (a: Complex, b: Complex): Complex => complex(a.re - b.re, a.im - b.im);
export const times = (a: Complex, b: Complex): Complex =>
  complex(a.re * b.re - a.im * b.im, a.re * b.im + a.im * b.re);
/** a / b; b must not be 0. */
export const over = (a: Complex, b: Complex): Complex => {
  const size = b.re * b.re + b.im * b.im;
  return complex((a.re * b.re + a.im * b.im) / size, (a.im * b.re - a.re * b.im) / size);
};
export const magnitude = (a: Complex): number => Math.hypot(a.re, a.im);
/** Angle in degrees, over -180 up to 180. */
export const angleDeg = (a: Complex): number => (Math.atan2(a.im, a.re) * 180) / Math.PI;
