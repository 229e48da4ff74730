/**
 * The shot's step against two general-purpose engines, rapier3d-compat and cannon-es, on the scene of shot-box.ts. An
 * engine's step is varied; its speed is read off where its overlap equals ours at our own step.
 *
 * Not equal: both engines are set to forgive no overlap (rapier: allowed error and prediction to the scale of the
 * balls, erp 0.8; cannon: stiff contacts); they run their default 4 and 10 solver iterations; rapier keeps single
 * precision. Ours is built as the app builds it.
 */
import type RapierModule from '@dimforge/rapier3d-compat';
import * as CANNON from 'cannon-es';
import type * as ShotModule from '../../src/core/shot';
import { ballMass, box, STEEL } from '../shot/worlds';
import { built } from './built';
import type { Measure, Row } from './row';
import {
  DIAMETER_M,
  type Engine,
  FRICTION,
  type Outcome,
  RESTITUTION,
  runBox,
  type Scene,
  SCENES,
  SIDE_M,
  speedAt,
  STARTS,
} from './shot-box';

type Shot = typeof ShotModule;
type Rapier = typeof RapierModule;

function ours(shot: Shot, { gravity_m_s2 }: Scene, step_s: number): Engine {
  const balls = shot.createBalls(STARTS.length);
  STARTS.forEach(({ at, radius_m }, i) => shot.setBall(balls, i, at, radius_m, ballMass(radius_m)));
  let angle = 0;
  const world = shot.createWorld({
    balls,
    walls: shot.wallTable(box(SIDE_M)),
    gravity: [gravity_m_s2, 0, 0],
    friction: FRICTION,
    restitution: RESTITUTION,
    drive: (_time, out) => {
      out.angle_rad = angle;
      out.speed_rad_s = out.acceleration_rad_s2 = 0;
    },
  });
  const touched = shot.createTouched(STARTS.length);
  return {
    step: (x, y) => {
      angle = Math.atan2(-y, x);
      shot.stepPositions(world, touched, step_s, gravity_m_s2);
    },
    at: (i, axis) => balls.position[i * shot.P + axis]!,
  };
}

function rapier(RAPIER: Rapier, step_s: number): Engine {
  const world = new RAPIER.World({ x: 0, y: 0, z: 0 });
  const p = world.integrationParameters;
  p.dt = step_s;
  p.erp = 0.8;
  p.allowedLinearError = 1e-7;
  p.predictionDistance = 5e-4;
  const wall = (hx: number, hy: number, hz: number, x: number, y: number, z: number): void => {
    const desc = RAPIER.ColliderDesc.cuboid(hx, hy, hz).setTranslation(x, y, z);
    world.createCollider(desc.setFriction(FRICTION).setRestitution(RESTITUTION));
  };
  const [s, t] = [SIDE_M / 2, 0.02];
  for (const side of [-t, SIDE_M + t]) {
    wall(t, SIDE_M, SIDE_M, side, s, s);
    wall(SIDE_M, t, SIDE_M, s, side, s);
    wall(SIDE_M, SIDE_M, t, s, s, side);
  }
  const bodies = STARTS.map(({ at, radius_m }) => {
    const body = world.createRigidBody(
      RAPIER.RigidBodyDesc.dynamic()
        .setTranslation(...at)
        .setCanSleep(false),
    );
    const desc = RAPIER.ColliderDesc.ball(radius_m).setDensity(STEEL);
    world.createCollider(desc.setFriction(FRICTION).setRestitution(RESTITUTION), body);
    return body;
  });
  return {
    step: (x, y) => {
      world.gravity = { x, y, z: 0 };
      world.step();
    },
    at: (i, axis) => {
      const { x, y, z } = bodies[i]!.translation();
      return [x, y, z][axis]!;
    },
    free: () => world.free(),
  };
}

function cannon(step_s: number): Engine {
  const world = new CANNON.World();
  world.allowSleep = false;
  world.broadphase = new CANNON.SAPBroadphase(world);
  const contact = world.defaultContactMaterial;
  contact.friction = FRICTION;
  contact.restitution = RESTITUTION;
  contact.contactEquationStiffness = contact.frictionEquationStiffness = 1e9;
  for (let axis = 0; axis < 3; axis++) {
    for (const side of [0, 1]) {
      const body = new CANNON.Body({ mass: 0, shape: new CANNON.Plane() });
      const normal = new CANNON.Vec3();
      normal.set(...([0, 1, 2].map((k) => (k === axis ? 1 - 2 * side : 0)) as [number, number, number]));
      body.quaternion.setFromVectors(new CANNON.Vec3(0, 0, 1), normal);
      const at = [0, 1, 2].map((k) => (k === axis ? side * SIDE_M : 0)) as [number, number, number];
      body.position.set(...at);
      world.addBody(body);
    }
  }
  const bodies = STARTS.map(({ at, radius_m }) => {
    const body = new CANNON.Body({
      mass: ballMass(radius_m),
      shape: new CANNON.Sphere(radius_m),
      linearDamping: 0,
      angularDamping: 0,
    });
    body.position.set(...at);
    world.addBody(body);
    return body;
  });
  return {
    step: (x, y) => {
      world.gravity.set(x, y, 0);
      world.step(step_s);
    },
    at: (i, axis) => {
      const { x, y, z } = bodies[i]!.position;
      return [x, y, z][axis]!;
    },
  };
}

/** Steps of the engines, coarse to fine, that bracket our overlap. */
const STEPS = {
  rapier: [
    [4e-3, 2e-3, 1e-3, 5e-4, 2.5e-4],
    [4e-4, 2e-4, 1e-4, 5e-5],
  ],
  cannon: [
    [2e-3, 1e-3, 5e-4, 2.5e-4],
    [4e-4, 2e-4, 1e-4, 5e-5],
  ],
} as const;

const percent = (share: number): string => `${(100 * share).toFixed(3)} %`;
const said = (o: Outcome): string =>
  `${+(1e3 * o.step_s).toPrecision(3)} ms: ${percent(o.mean)} mean, ${percent(o.p95)} p95, ` +
  `${o.pairs.toFixed(1)} pairs a ball, ${o.speed.toPrecision(3)} s/s`;

/** One engine's outcomes against ours, at equal mean and at equal 95th percentile. */
function rowsAgainst(scene: Scene, us: Outcome, baseline: string, theirs: readonly Outcome[]): Row[] {
  const kept = theirs.filter((o) => Number.isFinite(o.mean) && o.pairs > 0);
  console.log(`  ${scene.name}, ${baseline}:\n    ${theirs.map(said).join('\n    ')}`);
  return (['mean', 'p95'] as const).map((which) => {
    const found = speedAt(kept, (o) => o[which], us[which]);
    return {
      name: `simulated time a second of processor time, ${scene.name}, equal ${which} overlap`,
      unit: 's/s',
      ours: us.speed,
      baseline,
      baseline_value: found,
      more_is_better: true,
      note:
        `ours ${said(us)}; ` +
        (found === null
          ? `none of its steps brackets that overlap: ${kept.map(said).join('; ')}`
          : 'equal: balls, walls, friction, restitution, gravity, one thread, overlap read by the same code') +
        '; not equal: solver iterations (ours 1, rapier 4, cannon 10), precision (rapier single), how each counts contacts',
    };
  });
}

export const measure: Measure = async () => {
  const { default: RAPIER } = await import('@dimforge/rapier3d-compat');
  await RAPIER.init();
  const shot = await built<Shot>('core/shot/index.ts');
  return SCENES.flatMap((scene, n) => {
    const step_s = shot.positionStep(0.01, DIAMETER_M, scene.gravity_m_s2);
    // The first run only warms up the compiler.
    const runs = [0, 1, 2].map(() => runBox(ours(shot, scene, step_s), scene, step_s)).slice(1);
    const us = runs.reduce((a, b) => (b.speed > a.speed ? b : a));
    const outcomes = (engine: (h: number) => Engine, steps: readonly number[]): Outcome[] =>
      steps.map((h) => runBox(engine(h), scene, h));
    return [
      ...rowsAgainst(
        scene,
        us,
        'rapier3d-compat',
        outcomes((h) => rapier(RAPIER, h), STEPS.rapier[n]!),
      ),
      ...rowsAgainst(scene, us, 'cannon-es', outcomes(cannon, STEPS.cannon[n]!)),
    ];
  });
};
