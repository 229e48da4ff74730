/**
 * The balls on the stage while the shot is watched: in the exciter's pose, repeated along the chamber, with the baffle
 * of the run, the force and the centre of the shot. Three draw calls; the machine's own parts are shown or ghosted by
 * the store's visibility as ever.
 */
import { useFrame } from '@react-three/fiber';
import { useEffect, useMemo } from 'react';
import { Color, Group, type Object3D } from 'three';
import { readingAt, selectShownRun, shotBase, shotTransient, totalMoment, turningAt } from '../../../store';
import { useApp, useAppStore } from '../../bind';
import type { StagePalette } from '../palette';
import type { StageLink } from '../stage-link';
import { ballBatch, type ChamberSpan } from './ball-batch';
import { marks } from './marks';
import { plate } from './plate';

interface Props {
  readonly link: StageLink;
  readonly palette: StagePalette;
}

export function ShotStage({ link, palette }: Props) {
  const open = useApp((s) => s.shot.open);
  return open ? <OpenShot link={link} palette={palette} /> : null;
}

function OpenShot({ link, palette }: Props) {
  const store = useAppStore();
  const run = useApp(selectShownRun);
  const document = useApp((s) => s.document);
  const own = useApp((s) => s.shot.own.high);
  const along = useApp((s) => s.shot.along);
  const base = document === null ? null : shotBase(document);
  const drawn = useMemo(() => {
    const group = new Group();
    const parts = { group, balls: ballBatch(), plate: plate(), marks: marks() };
    group.add(parts.balls.mesh, parts.plate.mesh, parts.marks.mesh);
    return { ...parts, seen: { version: -1, eye: '' } };
  }, []);
  useEffect(
    () => () => {
      drawn.balls.dispose();
      drawn.plate.dispose();
      drawn.marks.dispose();
    },
    [drawn],
  );

  useEffect(() => {
    // Taken at the moment of drawing, when the parts of this frame stand where they belong.
    const part = base?.housingPart ?? '';
    const pose = function (this: Object3D): void {
      const at = link.table?.indexOf.get(part);
      if (link.table !== null && at !== undefined) this.matrixWorld.fromArray(link.table.matrices, 16 * at);
    };
    for (const child of drawn.group.children) child.onBeforeRender = pose;
  }, [drawn, base, link]);

  useEffect(() => {
    drawn.marks.card(new Color(palette.card).convertLinearToSRGB());
    link.invalidate();
  }, [drawn, palette, link]);

  const span = useMemo<ChamberSpan | null>(() => {
    if (base === null || run === null) return null;
    const { from_x_m, to_x_m } = base.basis.housing.chamber;
    const { depth_m } = run.take.parameters.slice;
    if (along === 'repeated') return { from_x_m, to_x_m, depth_m };
    const from_m = (from_x_m + to_x_m - depth_m) / 2;
    return { from_x_m: from_m, to_x_m: from_m + depth_m, depth_m };
  }, [base, run, along]);

  useEffect(() => {
    if (span === null || run === null || base === null) return;
    drawn.plate.write(run.take.parameters, span);
    const { chamber, housing } = base.basis;
    drawn.marks.place(
      (span.from_x_m + span.to_x_m) / 2,
      chamber.eccentricity_m + chamber.radius_m + housing.shell_m,
    );
    drawn.seen.version = -1;
    link.invalidate();
  }, [drawn, span, run, base, link]);

  const longest = useMemo(() => {
    if (base === null || own === null) return 0;
    const last = own.take.readings[own.take.readings.length - 1]!;
    return Math.hypot(...totalMoment(base, 'fitted', last.shot_kgm)) * last.speed_rad_s ** 2;
  }, [base, own]);

  useFrame(() => {
    const { seen } = drawn;
    const ready = run !== null && span !== null && base !== null && shotTransient.take === run.take;
    drawn.group.visible = ready;
    const { eye } = store.getState().shot;
    if (!ready || (seen.version === shotTransient.version && seen.eye === eye)) return;
    seen.version = shotTransient.version;
    seen.eye = eye;
    const { time_s } = shotTransient;
    drawn.balls.write(shotTransient, span);
    const { angle_rad, speed_rad_s } = turningAt(run.take, time_s);
    const now = readingAt(run.take, time_s);
    const [x, y] = totalMoment(base, run.setup.baffle, now.shot_kgm);
    const k = longest > 0 ? speed_rad_s ** 2 / longest : 0;
    const down = eye === 'room' ? null : ([Math.cos(angle_rad), -Math.sin(angle_rad)] as const);
    drawn.marks.write([k * x, k * y], now.centre_m, down);
  });

  return <primitive object={drawn.group} />;
}
