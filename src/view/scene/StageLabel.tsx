/** Name of the part under the pointer, beside it. The lists say the same to those who do not see it. */
import { useEffect, useRef } from 'react';
import { useApp, useSpeech } from '../bind';
import { partName } from './part-name';
import type { StagePalette } from './palette';

interface Props {
  /** Place of the pointer on the stage, CSS pixels; null: it is not on the stage. */
  readonly pointer: { readonly current: { x: number; y: number } | null };
  readonly palette: StagePalette;
}

export function StageLabel({ pointer, palette }: Props) {
  const hovered = useApp((s) => s.hoveredPart);
  const machine = useApp((s) => s.document?.machine ?? null);
  const speech = useSpeech();
  const box = useRef<HTMLDivElement>(null);
  const shows = hovered !== null && machine !== null && pointer.current !== null;

  useEffect(() => {
    if (!shows) return;
    let frame = 0;
    const follow = (): void => {
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(() => {
        const at = pointer.current;
        const node = box.current;
        const stage = node?.parentElement;
        if (at === null || node === null || stage == null) return;
        const left =
          at.x + 16 + node.offsetWidth > stage.clientWidth - 8 ? at.x - 12 - node.offsetWidth : at.x + 16;
        const top = Math.min(stage.clientHeight - node.offsetHeight - 8, at.y + 14);
        node.style.transform = `translate(${Math.max(8, left)}px, ${top}px)`;
        node.style.visibility = 'visible';
      });
    };
    follow();
    window.addEventListener('pointermove', follow);
    return () => {
      cancelAnimationFrame(frame);
      window.removeEventListener('pointermove', follow);
    };
  }, [shows, pointer, hovered]);

  if (!shows) return null;
  const kind = machine.kinds[machine.parts.find((p) => p.id === hovered)?.kind ?? ''];
  return (
    <div
      ref={box}
      aria-hidden="true"
      data-testid="stage-label"
      style={{
        position: 'absolute',
        left: 0,
        top: 0,
        zIndex: 2,
        visibility: 'hidden',
        pointerEvents: 'none',
        display: 'flex',
        gap: '0.5em',
        alignItems: 'baseline',
        padding: '3px 9px 2px',
        maxWidth: '70%',
        font: '600 0.8125rem/1.35 var(--font, sans-serif)',
        color: palette.ink,
        background: palette.card,
        border: `1px solid ${palette.ink}`,
        borderRadius: 2,
      }}
    >
      {kind !== undefined && (
        <span style={{ fontFamily: 'var(--mono, monospace)', color: palette.faint }}>{kind.item}</span>
      )}
      <span>{partName(speech, machine, hovered)}</span>
    </div>
  );
}
