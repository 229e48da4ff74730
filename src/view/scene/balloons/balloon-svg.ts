/** Draws balloons into one SVG: circle, number, thin leader, dot. Nodes are kept and moved, never rebuilt in a frame. */
import type { Balloon } from '../../../core/geometry';

const NS = 'http://www.w3.org/2000/svg';

interface Node {
  readonly group: SVGGElement;
  /** Clears a little paper round the leader where it runs over dark parts. */
  readonly halo: SVGLineElement;
  readonly line: SVGLineElement;
  readonly dot: SVGCircleElement;
  readonly ring: SVGCircleElement;
  readonly text: SVGTextElement;
}

export interface BalloonLook {
  readonly ink: string;
  readonly card: string;
  readonly accent: string;
  readonly radius: number;
}

export interface BalloonSvg {
  draw(
    balloons: readonly Balloon[],
    numberOf: (id: string) => number,
    isSelected: (id: string) => boolean,
    look: BalloonLook,
  ): void;
}

export function balloonSvg(svg: SVGSVGElement, onChoose: (id: string) => void): BalloonSvg {
  const nodes = new Map<string, Node>();

  const make = (id: string): Node => {
    const group = el('g', svg);
    const node: Node = {
      group,
      halo: el('line', group),
      line: el('line', group),
      dot: el('circle', group),
      ring: el('circle', group),
      text: el('text', group),
    };
    node.text.setAttribute('text-anchor', 'middle');
    node.text.setAttribute('dominant-baseline', 'central');
    node.ring.style.pointerEvents = 'all';
    node.ring.style.cursor = 'pointer';
    node.ring.addEventListener('click', () => onChoose(id));
    nodes.set(id, node);
    return node;
  };

  return {
    draw(balloons, numberOf, isSelected, look) {
      const now = new Set(balloons.map((b) => b.id));
      for (const [id, node] of nodes)
        if (!now.has(id)) {
          node.group.remove();
          nodes.delete(id);
        }
      for (const b of balloons) {
        const node = nodes.get(b.id) ?? make(b.id);
        const colour = isSelected(b.id) ? look.accent : look.ink;
        const number = String(numberOf(b.id));
        const d = Math.hypot(b.x - b.bx, b.y - b.by) || 1;
        const ends = {
          x1: b.bx + ((b.x - b.bx) * look.radius) / d,
          y1: b.by + ((b.y - b.by) * look.radius) / d,
          x2: b.x,
          y2: b.y,
        };
        set(node.halo, { ...ends, stroke: look.card, 'stroke-width': 3.2, 'stroke-opacity': 0.6 });
        set(node.line, {
          ...ends,
          stroke: colour,
          'stroke-width': isSelected(b.id) ? 1.6 : 0.9,
        });
        set(node.dot, { cx: b.x, cy: b.y, r: 2.6, fill: colour, stroke: look.card, 'stroke-width': 0.9 });
        set(node.ring, {
          cx: b.bx,
          cy: b.by,
          r: look.radius,
          fill: look.card,
          stroke: colour,
          'stroke-width': isSelected(b.id) ? 2 : 1.2,
        });
        set(node.text, {
          x: b.bx,
          y: b.by + look.radius * 0.06,
          fill: colour,
          'font-size': look.radius * (number.length > 2 ? 0.82 : 0.98),
        });
        if (node.text.textContent !== number) node.text.textContent = number;
      }
    },
  };
}

function el<K extends 'g' | 'line' | 'circle' | 'text'>(name: K, parent: Element): SVGElementTagNameMap[K] {
  const node = document.createElementNS(NS, name);
  parent.appendChild(node);
  return node;
}

function set(node: Element, values: Readonly<Record<string, string | number>>): void {
  for (const [name, value] of Object.entries(values))
    node.setAttribute(name, typeof value === 'number' ? value.toFixed(1) : value);
}
