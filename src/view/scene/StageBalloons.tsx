/** Item balloons over the stage: numbers of the parts list, moved with the parts in each frame, chosen anew at rest. */
import { useEffect, useRef } from 'react';
import { useApp, useAppStore, useCommands } from '../bind';
import { projectSeen, type SeenPoint, seenPoints, wantedBalloons, MOST_BALLOONS } from './balloons/anchors';
import { type BalloonSvg, balloonSvg } from './balloons/balloon-svg';
import { layoutBalloons } from '../../core/geometry';
import type { StagePalette } from './palette';
import type { StageLink } from './stage-link';
import { selectStageView, transient } from '../../store';

interface Props {
  readonly link: StageLink;
  readonly palette: StagePalette;
}

/** Time given to looking for points before others get a turn, ms. */
const SLICE_MS = 7;
/** Rest before points are looked for anew, ms. */
const SETTLE_MS = 90;
/** Distance of the columns from the edge of the stage, inside the sheet's frame. */
const INSET_PX = 30;

export function StageBalloons({ link, palette }: Props) {
  const store = useAppStore();
  const commands = useCommands();
  const svg = useRef<SVGSVGElement>(null);
  // A view marks the parts itself; the numbers stay in its legend.
  const on = useApp((s) => s.balloons && selectStageView(s) === null);

  useEffect(() => {
    const node = svg.current;
    if (node === null || !on) return;
    const chosen = (id: string): void => commands.select(id);
    const drawing: BalloonSvg = balloonSvg(node, chosen);
    let seen: readonly SeenPoint[] = [];
    let timer: ReturnType<typeof setTimeout> | undefined;

    const draw = (): void => {
      const { camera, table, width, height } = link;
      if (camera === null || table === null)
        return drawing.draw(
          [],
          () => 0,
          () => false,
          lookNow(),
        );
      const { parts, kinds } = table.document.machine;
      const look = lookNow();
      const anchors = seen.flatMap((point) => {
        const at = table.shown[point.part] === 0 ? null : projectSeen(table, point, camera, width, height);
        const inside = at !== null && at.x > 0 && at.x < width && at.y > 0 && at.y < height;
        return inside ? [{ id: parts[point.part]!.id, ...at }] : [];
      });
      const edge = INSET_PX + look.radius;
      const [top, bottom] = freeHeight(node, edge, height - edge);
      const balloons = layoutBalloons(anchors, {
        leftX: edge,
        rightX: width - edge,
        top,
        bottom,
        gap: look.radius * 2 + 7,
      });
      const selected = store.getState().selectedPart;
      const kindOf = new Map(parts.map((p) => [p.id, p.kind]));
      const itemOf = (id: string): number => kinds[kindOf.get(id) ?? '']?.item ?? 0;
      link.balloons = balloons.map((b) => ({ ...b, item: itemOf(b.id) }));
      link.balloonRadius = look.radius;
      drawing.draw(balloons, itemOf, (id) => id === selected, look);
    };
    const lookNow = () => ({
      ink: palette.ink,
      card: palette.card,
      accent: palette.accent,
      radius: 12.5 * palette.type,
    });

    const search = (): void => {
      const { camera, table, cut } = link;
      if (camera === null || table === null) return;
      const state = store.getState();
      const wanted = wantedBalloons(table, state, transient.explode > 0.05);
      const points = seenPoints(table, camera, cut, wanted);
      const found: SeenPoint[] = [];
      const room = Math.min(MOST_BALLOONS, 2 * Math.floor((link.height - 80) / (32 * palette.type)));
      const slice = (): void => {
        const until = performance.now() + SLICE_MS;
        for (;;) {
          const next = found.length >= room ? { done: true as const, value: undefined } : points.next();
          if (next.done === true) {
            seen = found;
            draw();
            return;
          }
          if (next.value !== null && next.value !== undefined) found.push(next.value);
          if (performance.now() > until) break;
        }
        timer = setTimeout(slice, 0);
      };
      slice();
    };

    const onFrame = (settled: boolean): void => {
      draw();
      clearTimeout(timer);
      if (settled) timer = setTimeout(search, SETTLE_MS);
    };
    link.onFrame = onFrame;
    search();
    return () => {
      clearTimeout(timer);
      link.onFrame = null;
      link.balloons = [];
      node.replaceChildren();
    };
  }, [link, palette, on, store, commands]);

  return (
    <svg
      ref={svg}
      aria-hidden="true"
      data-testid="stage-balloons"
      style={{
        position: 'absolute',
        inset: 0,
        width: '100%',
        height: '100%',
        pointerEvents: 'none',
        fontFamily: 'var(--mono, monospace)',
        fontWeight: 600,
      }}
    />
  );
}

/** Heights between which columns may stand: clear of anything that lies over the stage (data-stage-obstacle). */
function freeHeight(svg: SVGSVGElement, top: number, bottom: number): [number, number] {
  const stage = svg.getBoundingClientRect();
  for (const obstacle of document.querySelectorAll('[data-stage-obstacle]')) {
    const box = obstacle.getBoundingClientRect();
    if (box.right < stage.left || box.left > stage.right || box.height === 0) continue;
    const from = box.top - stage.top - top;
    const to = box.bottom - stage.top;
    if (from < stage.height / 3 && to < stage.height / 2) top = Math.max(top, to + 20);
    else if (from > stage.height / 2) bottom = Math.min(bottom, box.top - stage.top - 20);
  }
  return [top, Math.max(top + 1, bottom)];
}
