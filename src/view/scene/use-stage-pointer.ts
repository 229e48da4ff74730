/**
 * Pointer and keys on the stage: hover names, click selects (never after a drag), double click fits, keys orbit. In
 * practice a drag that begins on a part and goes its way pulls at it, and the camera stays.
 */
import { type RefObject, useEffect } from 'react';
import { Raycaster, Vector2, type Vector3 } from 'three';
import { useCommands } from '../bind';
import { pick } from './pick/pick';
import { handDrag, isInHand, type Point } from './practice/hand-drag';
import type { StageLink } from './stage-link';
import { useAppStore } from '../bind';

/** A pointer that moved farther than this between down and up was dragging, CSS pixels. */
const DRAG_PX = 5;
const KEY_TURN_RAD = Math.PI / 24;
const KEY_ZOOM = 1.15;

const farFrom = (a: Point, b: Point): boolean => Math.hypot(b.x - a.x, b.y - a.y) > DRAG_PX;

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
    let reaching: { partId: string; point: Vector3; from: Point } | null = null;
    const hand = handDrag(store, commands, link);

    const place = (event: PointerEvent | MouseEvent): { x: number; y: number } => {
      const box = node.getBoundingClientRect();
      return { x: event.clientX - box.left, y: event.clientY - box.top };
    };
    const hitAt = ({ x, y }: Point): { partId: string; point: Vector3 } | null => {
      const { camera, table, cut, width, height } = link;
      if (camera === null || table === null) return null;
      caster.setFromCamera(ndc.set((x / width) * 2 - 1, 1 - (y / height) * 2), camera);
      const hit = pick(table, caster.ray, cut);
      return hit === null ? null : { partId: table.document.machine.parts[hit.part]!.id, point: hit.point };
    };
    const partAt = (at: Point): string | null => hitAt(at)?.partId ?? null;

    /** A part is under a finger that has not moved yet: will it be pulled, or the view turned? */
    const reach = (event: PointerEvent): void => {
      if (event.button !== 0 || link.controls === null || store.getState().practice.stage === null) return;
      const hit = hitAt(place(event));
      if (hit === null) return;
      reaching = { ...hit, from: place(event) };
      link.controls.enabled = false;
    };
    const letGo = (event: PointerEvent, cancelled: boolean): void => {
      reaching = null;
      if (link.controls !== null) link.controls.enabled = true;
      if (!hand.active) return;
      hand.release(event.timeStamp, cancelled);
      node.style.cursor = '';
    };

    const move = (event: PointerEvent): void => {
      const at = place(event);
      if (event.isPrimary && hand.active) return hand.move(at, event.timeStamp);
      if (event.isPrimary && reaching !== null && farFrom(reaching.from, at)) {
        const { partId, point, from } = reaching;
        reaching = null;
        dragged = true;
        if (hand.take(partId, point.toArray(), from, at)) {
          node.setPointerCapture(event.pointerId);
          node.style.cursor = 'grabbing';
          return hand.move(at, event.timeStamp);
        }
        link.controls!.enabled = true;
      }
      if (down !== null) {
        if (farFrom(down, at)) dragged = true;
        if (dragged) return;
      }
      if (event.pointerType === 'touch') return;
      pointer.current = at;
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(() => {
        const partId = partAt(at);
        commands.hover(partId);
        node.style.cursor = isInHand(store, partId) ? 'grab' : '';
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
      reach(event);
    };
    const lift = (event: PointerEvent): void => {
      if (!event.isPrimary) return;
      letGo(event, false);
      const tapped = down !== null && !dragged && event.button === 0;
      down = null;
      if (tapped) commands.select(partAt(place(event)));
    };
    /** Before the camera's controls see it: with a second finger nothing is pulled, the view is theirs. */
    const second = (event: PointerEvent): void => {
      if (!event.isPrimary) letGo(event, true);
    };
    const cancel = (event: PointerEvent): void => letGo(event, true);
    const leave = (event: PointerEvent): void => {
      if (reaching !== null) letGo(event, true);
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

    node.addEventListener('pointermove', move);
    node.addEventListener('pointerdown', second, { capture: true });
    node.addEventListener('pointerdown', press);
    node.addEventListener('pointerup', lift);
    node.addEventListener('pointercancel', cancel);
    node.addEventListener('pointerleave', leave);
    node.addEventListener('dblclick', twice);
    node.addEventListener('keydown', key);
    return () => {
      cancelAnimationFrame(frame);
      if (hand.active) hand.release(0, true);
      node.removeEventListener('pointerdown', second, { capture: true });
      node.removeEventListener('pointermove', move);
      node.removeEventListener('pointerdown', press);
      node.removeEventListener('pointerup', lift);
      node.removeEventListener('pointercancel', cancel);
      node.removeEventListener('pointerleave', leave);
      node.removeEventListener('dblclick', twice);
      node.removeEventListener('keydown', key);
    };
  }, [stage, link, pointer, commands, store]);
}
