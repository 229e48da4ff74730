import type { RadialPistonMotorParams } from '../../machine';
import { segmentsFor } from '../segments';
import type { OutlinePoint } from '../solid-kernel';
import { body, type BuildContext } from './context';
import { boreHoles } from './holes';
import { turnedSolid } from './turned';

/** Output flange, and the cast body with a lobe over each piston, its mount flange and the cover with ports. */
export function buildRadialPistonMotor(context: BuildContext, params: RadialPistonMotorParams) {
  const { solids } = context;
  const { output, body: shell, mount, cover } = params;
  const flange = turnedSolid(solids, {
    chamfer_m: 0.003,
    stations: [
      { from_x_m: -output.thickness_m, to_x_m: 0, inner_m: 0, outer_m: output.radius_m },
      {
        from_x_m: -output.thickness_m - output.boss_length_m,
        to_x_m: -output.thickness_m,
        inner_m: 0,
        outer_m: output.boss_m,
      },
    ],
    holes: params.output_holes,
  });
  const front = -output.thickness_m - output.boss_length_m;
  const coverFrom = shell.to_x_m + cover.length_m;
  const lobed = solids.prism(lobes(params), mount.to_x_m, front - 0.03);
  const plain = turnedSolid(solids, {
    chamfer_m: 0.005,
    stations: [
      { from_x_m: front - 0.03, to_x_m: front, inner_m: 0, outer_m: shell.radius_m - shell.lobe_depth_m / 2 },
      { from_x_m: mount.from_x_m, to_x_m: mount.to_x_m, inner_m: 0, outer_m: mount.radius_m },
      { from_x_m: coverFrom, to_x_m: mount.from_x_m, inner_m: 0, outer_m: shell.radius_m },
    ],
    holes: params.mount_holes,
  });
  const lid = boreHoles(
    solids,
    turnedSolid(solids, {
      chamfer_m: 0.004,
      stations: [{ from_x_m: shell.to_x_m, to_x_m: coverFrom, inner_m: 0, outer_m: cover.radius_m }],
    }),
    params.ports,
    shell.to_x_m,
    coverFrom,
  );
  return [
    body(context, 'output-flange', flange, { finish: 'machined' }),
    body(context, 'body', solids.union([lobed, plain]), { finish: 'cast' }),
    body(context, 'cover', lid, { finish: 'machined' }),
  ];
}

/** A round that swells over each piston: radius + depth between lobes and their crests, as a wave of the angle. */
function lobes({ body: shell }: RadialPistonMotorParams): readonly OutlinePoint[] {
  const n = Math.max(segmentsFor(shell.radius_m), shell.lobes * 10);
  return Array.from({ length: n }, (_, i) => {
    const a = (2 * Math.PI * i) / n;
    const wave = Math.abs(Math.cos((shell.lobes * a) / 2));
    const r = shell.radius_m - shell.lobe_depth_m * (1 - Math.sqrt(wave));
    return [r * Math.cos(a), r * Math.sin(a)] as const;
  });
}
