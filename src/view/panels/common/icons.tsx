/** Small line drawings for buttons: 20 by 20, one stroke width, drawn in the current ink. Words stand beside or in the label. */
import type { ReactNode } from 'react';

const PATHS: Readonly<Record<string, ReactNode>> = {
  hide: (
    <>
      <path d="M2 10c2-3.5 5-5.2 8-5.2s6 1.7 8 5.2c-2 3.5-5 5.2-8 5.2S4 13.5 2 10Z" />
      <circle cx="10" cy="10" r="2.4" />
    </>
  ),
  hidden: (
    <>
      <path d="M2 10c2-3.5 5-5.2 8-5.2s6 1.7 8 5.2c-2 3.5-5 5.2-8 5.2S4 13.5 2 10Z" />
      <path d="M4 17 16 3" />
    </>
  ),
  ghost: <path d="M4 6.5 10 3l6 3.5v7L10 17l-6-3.5ZM4 6.5l6 3.5 6-3.5M10 10v7" strokeDasharray="2.2 1.8" />,
  isolate: (
    <>
      <circle cx="10" cy="10" r="3.2" fill="currentColor" stroke="none" />
      <path d="M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4" />
    </>
  ),
  fit: <path d="M3 7V3h4M13 3h4v4M17 13v4h-4M7 17H3v-4M7 10h6M10 7v6" />,
  play: <path d="M6 3.5v13l10.5-6.5Z" fill="currentColor" stroke="none" />,
  'play-back': <path d="M14 3.5v13L3.5 10Z" fill="currentColor" stroke="none" />,
  pause: <path d="M5.5 4h3v12h-3zM11.5 4h3v12h-3z" fill="currentColor" stroke="none" />,
  next: (
    <>
      <path d="M5 4v12l8-6Z" fill="currentColor" stroke="none" />
      <path d="M15 4v12" strokeWidth="2" />
    </>
  ),
  back: (
    <>
      <path d="M15 4v12l-8-6Z" fill="currentColor" stroke="none" />
      <path d="M5 4v12" strokeWidth="2" />
    </>
  ),
  save: <path d="M10 3v9M6 8.5l4 4 4-4M3.5 13v4h13v-4" />,
  close: <path d="m4.5 4.5 11 11M15.5 4.5l-11 11" />,
  up: <path d="m4 13 6-6 6 6" />,
  down: <path d="m4 7 6 6 6-6" />,
  right: <path d="m7 4 6 6-6 6" />,
  list: <path d="M7 5h10M7 10h10M7 15h10M3 5h.01M3 10h.01M3 15h.01" strokeWidth="2" />,
  panel: <path d="M3 4h14v12H3ZM12 4v12" />,
  settings: (
    <>
      <path d="M3 6h8M15 6h2M3 14h2M9 14h8" />
      <circle cx="13" cy="6" r="2" />
      <circle cx="7" cy="14" r="2" />
    </>
  ),
  section: (
    <>
      <circle cx="10" cy="10" r="7" />
      <path d="M10 3v14M10 7l4-3M10 11.5l6.5-5M10 16l6.5-5" />
    </>
  ),
  spin: <path d="M16.5 10a6.5 6.5 0 1 1-2.2-4.9M14.8 1.8v3.6h-3.6" />,
  balloons: (
    <>
      <circle cx="13" cy="6.5" r="4" />
      <path d="m10.2 9.3-6.4 6.4" />
      <circle cx="3.8" cy="15.8" r="1.2" fill="currentColor" stroke="none" />
    </>
  ),
  steps: <path d="M3 16h4v-4h4V8h4V4h2" />,
  search: (
    <>
      <circle cx="8.5" cy="8.5" r="5" />
      <path d="m12.5 12.5 4.5 4.5" />
    </>
  ),
  'turn-ccw': <path d="M3.5 10a6.5 6.5 0 1 0 2.2-4.9M5.2 1.8v3.6h3.6" />,
  'turn-cw': <path d="M16.5 10a6.5 6.5 0 1 1-2.2-4.9M14.8 1.8v3.6h-3.6" />,
};

export type IconName = keyof typeof PATHS;

export function Icon({ name, size = 20 }: { readonly name: string; readonly size?: number }) {
  return (
    <svg
      width={size}
      height={size}
      viewBox="0 0 20 20"
      fill="none"
      stroke="currentColor"
      strokeWidth="1.5"
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
      focusable="false"
    >
      {PATHS[name]}
    </svg>
  );
}
