import { describe, expect, it } from 'vitest';
import { massOfParts, meshIntegrals, validateSolid, withSolids } from '../../src/core/geometry';
import { findOverlaps } from '../../src/core/studies/overlap';
import { kernel, machine, masses, solids } from './alder-one';

const triangles = (kind: string): number =>
  solids[kind]!.bodies.reduce((sum, b) => sum + b.solid.indices.length / 3, 0);

describe('every kind', () => {
  it('is closed, outward and without degenerate triangles', () => {
    const faults = Object.entries(solids).flatMap(([id, solid]) =>
      solid.bodies.flatMap((b) =>
        validateSolid(b.solid).map((f) => `${id} ${b.name}: ${f.fault} ${f.count}`),
      ),
    );
    expect(faults).toEqual([]);
  });

  it('has bodies that do not share space', () => {
    const shared: string[] = [];
    withSolids(kernel, (s) => {
      for (const [id, { bodies }] of Object.entries(solids)) {
        // A hose is crimped into its fittings on purpose.
        if (bodies.length < 2 || machine.kinds[id]!.params.builder === 'hose') continue;
        const whole = s.union(bodies.map((b) => s.fromMesh(b.solid))).volume();
        const sum = bodies.reduce((v, b) => v + meshIntegrals(b.solid).volume_m3, 0);
        // Faces that touch in single precision may overlap by a few hundredths of a cubic millimetre.
        if (sum - whole > 1e-6 * sum) shared.push(`${id}: ${((sum - whole) * 1e9).toFixed(2)} mm3`);
      }
    });
    expect(shared).toEqual([]);
  });

  it('is lean enough for a phone: the machine stays under 250,000 triangles', () => {
    const total = machine.parts.reduce((sum, part) => sum + triangles(part.kind), 0);
    expect(total).toBeLessThan(250_000);
  });
});

describe('masses from solids', () => {
  // Design basis of the machine: kilograms, and the share by which the solid may differ.
  const expected: readonly (readonly [string, number, number])[] = [
    ['drum-shell', 2165, 0.01],
    ['head-left', 537, 0.01],
    ['head-right', 346, 0.02],
    ['exciter-case', 252, 0.01],
    ['hub', 197, 0.02],
    ['spindle', 56, 0.05],
    ['mounting-plate', 89, 0.04],
    ['drive-plate', 157, 0.02],
    ['drive-motor', 230, 0.001],
    ['exciter-motor', 28, 0.001],
  ];
  it.each(expected)('%s weighs about %d kg', (kind, mass_kg, share) => {
    expect(Math.abs(masses[kind]!.mass_kg / mass_kg - 1)).toBeLessThan(share);
  });

  it('the cartridge weighs about 290 kg', () => {
    const cartridge = [
      'hub',
      'hub-o-ring',
      'spindle',
      'spindle-nut',
      'lock-washer',
      'wheel-bearing-inner',
      'wheel-bearing-outer',
      'hub-seal',
      'bearing-carrier-right',
      'carrier-o-ring-right',
      'exciter-bearing-right',
      'nose-seal',
    ];
    const { mass_kg } = massOfParts(machine, masses, cartridge);
    expect(mass_kg).toBeGreaterThan(280);
    expect(mass_kg).toBeLessThan(300);
  });

  it('the exciter with its shot weighs about 179 kg and is trimmed to (0.60, 0) kg m without it', () => {
    const turning = machine.parts.filter((p) => p.movesWith === 'exciter' && p.kind !== 'coupling-shaft');
    const all = massOfParts(machine, masses, turning.map((p) => p.id)); // prettier-ignore
    expect(all.mass_kg).toBeCloseTo(179, 0);
    const fixed = massOfParts(machine, masses, turning.filter((p) => p.id !== 'shot').map((p) => p.id)); // prettier-ignore
    // Body frame at rest: +x is machine -y, +y is machine -z.
    expect(Math.abs(-fixed.mass_kg * fixed.centre_m[1] - 0.6)).toBeLessThan(0.01);
    expect(Math.abs(-fixed.mass_kg * fixed.centre_m[2])).toBeLessThan(0.01);
  });

  it('the exciter keeps within its reach of 164 mm', () => {
    let reach = 0;
    for (const { solid } of solids['exciter-housing']!.bodies)
      for (let v = 0; v < solid.positions.length; v += 3)
        reach = Math.max(reach, Math.hypot(solid.positions[v + 1]!, solid.positions[v + 2]!));
    expect(reach).toBeLessThan(0.1642);
    expect(reach).toBeGreaterThan(0.163);
  });
});

describe('the machine assembled', () => {
  it('has no two solids in one space, drum, exciter and both sides', () => {
    const own = machine.parts.filter((p) => machine.kinds[p.kind]!.item < 60);
    // 1 mm3: what single precision leaves on faces that touch.
    expect(findOverlaps(kernel, { ...machine, parts: own }, solids, 1e-9)).toEqual([]);
  });

  it('would be told of a part in another one', () => {
    const own = machine.parts.filter((p) => p.id === 'hub' || p.id === 'head-right');
    const pushed = own.map((p) =>
      p.id === 'hub' ? { ...p, pose: { ...p.pose, position_m: [-0.002, 0, 0] as const } } : p,
    );
    const found = findOverlaps(kernel, { ...machine, parts: pushed }, solids);
    // The flange's ring from 230 to 330 mm, less its holes, 2 mm deep in the head.
    expect(found).toHaveLength(1);
    expect(found[0]!.volume_m3).toBeGreaterThan(1.5e-4);
  });
});
