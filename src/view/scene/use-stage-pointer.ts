/**
 * Pointer and keys on the stage: hover names, click selects (never after a drag), double click fits, keys orbit. In
 * practice a drag that begins on the unit in hand pulls at it, and the camera stays.
 */
import { type RefObject, useEffect } from 'react';
import { Raycaster, Vector2 } from 'three';
import { useCommands } from '../bind';
import { pick } from './pick/pick';
import type { StageLink } from './stage-link';
import { useAppStore } from '../bind';

/** A pointer that moved farther than this between down and up was dragging, CSS pixels. */
const DRAG_PX = 5;
/** A pull of this length is a try, CSS pixels: farther than a hand trembles. */
const PULL_PX = 28;
const KEY_TURN_RAD = Math.PI / 24;
const KEY_ZOOM = 1.15;

export function useStagePointer(
  stage: RefObject<HTMLElement | null>,
  link: StageLink,
  pointer: { current: { x: number; y: number } | null },
): void {
  const commands = useCommands();
  const store = useAppStore();

  useEffect(() => {
    const node = stage.current;
    if (node === null) return;
    const caster = new Raycaster();
    const ndc = new Vector2();
    let down: { x: number; y: number } | null = null;
    let dragged = false;
    let frame = 0;
    let pulling: { partId: string; x: number; y: number } | null = null;

    const place = (event: PointerEvent | MouseEvent): { x: number; y: number } => {
      const box = node.getBoundingClientRect();
      return { x: event.clientX - box.left, y: event.clientY - box.top };
    };
    const partAt = ({ x, y }: { x: number; y: number }): string | null => {
      const { camera, table, cut, width, height } = link;
      if (camera === null || table === null) return null;
      caster.setFromCamera(ndc.set((x / width) * 2 - 1, 1 - (y / height) * 2), camera);
      const hit = pick(table, caster.ray, cut);
      return hit === null ? null : table.document.machine.parts[hit.part]!.id;
    };

    /** Whether a part is of the unit that is in hand in practice. */
    const inHand = (partId: string | null): partId is string => {
      const { practice, selectedPart } = store.getState();
      const { stage: shown, run } = practice;
      if (shown === null || run === null || partId === null || selectedPart === null) return false;
      const body = run.bench.bodyOf(partId);
      return body >= 0 && body === run.bench.bodyOf(selectedPart);
    };
    /** Before the camera's controls see it. */
    const grip = (event: PointerEvent): void => {
      if (!event.isPrimary || event.button !== 0 || store.getState().practice.stage === null) return;
      const at = place(event);
      const partId = partAt(at);
      if (!inHand(partId)) return;
      event.stopPropagation();
      node.setPointerCapture(event.pointerId);
      pulling = { partId, ...at };
    };

    const move = (event: PointerEvent): void => {
      const at = place(event);
      if (pulling !== null) {
        if (Math.hypot(at.x - pulling.x, at.y - pulling.y) < PULL_PX) return;
        const { partId } = pulling;
        pulling = null;
        commands.pull(partId);
        return;
      }
      if (down !== null) {
        if (Math.hypot(at.x - down.x, at.y - down.y) > DRAG_PX) dragged = true;
        if (dragged) return;
      }
      if (event.pointerType === 'touch') return;
      pointer.current = at;
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(() => {
        const partId = partAt(at);
        commands.hover(partId);
        node.style.cursor = inHand(partId) ? 'grab' : '';
      });
    };
    const press = (event: PointerEvent): void => {
      if (!event.isPrimary) {
        // A second finger: this is a pinch, not a tap.
        dragged = true;
        return;
      }
      down = place(event);
      dragged = false;
    };
    const lift = (event: PointerEvent): void => {
      if (!event.isPrimary) return;
      pulling = null;
      const tapped = down !== null && !dragged && event.button === 0;
      down = null;
      if (tapped) commands.select(partAt(place(event)));
    };
    const leave = (): void => {
      pointer.current = null;
      cancelAnimationFrame(frame);
      commands.hover(null);
    };
    const twice = (event: MouseEvent): void => {
      const part = partAt(place(event));
      if (part === null) commands.lookAt('home');
      else commands.lookAt('fit', part);
    };
    const key = (event: KeyboardEvent): void => {
      const { rig } = link;
      if (rig === null || event.ctrlKey || event.metaKey || event.altKey) return;
      switch (event.key) {
        case 'ArrowLeft':
          rig.orbit(-KEY_TURN_RAD, 0);
          break;
        case 'ArrowRight':
          rig.orbit(KEY_TURN_RAD, 0);
          break;
        case 'ArrowUp':
          rig.orbit(0, -KEY_TURN_RAD);
          break;
        case 'ArrowDown':
          rig.orbit(0, KEY_TURN_RAD);
          break;
        case '+':
        case '=':
          rig.zoom(1 / KEY_ZOOM);
          break;
        case '-':
        case '_':
          rig.zoom(KEY_ZOOM);
          break;
        case 'Enter':
          commands.lookAt('fit', store.getState().selectedPart);
          break;
        default:
          return;
      }
      event.preventDefault();
      link.invalidate();
    };

    node.addEventListener('pointerdown', grip, { capture: true });
    node.addEventListener('pointermove', move);
    node.addEventListener('pointerdown', press);
    node.addEventListener('pointerup', lift);
    node.addEventListener('pointerleave', leave);
    node.addEventListener('dblclick', twice);
    node.addEventListener('keydown', key);
    return () => {
      cancelAnimationFrame(frame);
      node.removeEventListener('pointerdown', grip, { capture: true });
      node.removeEventListener('pointermove', move);
      node.removeEventListener('pointerdown', press);
      node.removeEventListener('pointerup', lift);
      node.removeEventListener('pointerleave', leave);
      node.removeEventListener('dblclick', twice);
      node.removeEventListener('keydown', key);
    };
  }, [stage, link, pointer, commands, store]);
}
