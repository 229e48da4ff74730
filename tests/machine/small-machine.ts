/** A little machine for tests: a tube welded to one end, the other end bolted on, two feet. */
export const smallMachine = `schema_version: 1
machine:
  id: small
  name: Small
  place: the bench
  drum_width_m: 0.4
  drum_radius_m: 0.1
sources:
  own: made up for tests
materials:
  steel:
    density_kg_m3: 7850
    source: own
operation:
  exciter_part: tube
  shot_part: null
  shot_mass_kg: 1
  shot_density_kg_m3: 7850
  shot_packing: 0.62
  ball_diameter_m: 0.012
  frequency_high_Hz: 30
  frequency_low_Hz: 34
  soft_start_s: 4
  friction: 0.3
  bearings: { left: end-left, right: end-right, left_x_m: -0.2, right_x_m: 0.2, C_N: 1000, C0_N: 1000 }
  operating_mass_kg: 100
  drum_axle_mass_kg: 50
kinds:
  tube:
    item: 1
    material: steel
    finish: shell
    family: drum
    params:
      builder: turned
      stations:
        - { from_x_m: -0.2, to_x_m: 0.2, inner_m: 0.08, outer_m: 0.12 }
  end:
    item: 2
    material: steel
    finish: machined
    family: drum
    params:
      builder: turned
      stations:
        - { from_x_m: 0, to_x_m: 0.02, inner_m: 0, outer_m: 0.12 }
      holes:
        - { diameter_m: 0.013, count: 4, radius_m: 0.1 }
  foot:
    item: 3
    material: steel
    finish: cast
    family: frame
    params:
      builder: turned
      stations:
        - { from_x_m: 0, to_x_m: 0.05, inner_m: 0, outer_m: 0.02 }
  end-bolt:
    item: 4
    material: steel
    finish: bolt
    family: fasteners
    params:
      builder: turned
      stations:
        - { from_x_m: -0.04, to_x_m: 0, inner_m: 0, outer_m: 0.006 }
        - { from_x_m: 0, to_x_m: 0.008, inner_m: 0, outer_m: 0.009 }
parts:
  - id: tube
    kind: tube
    moves_with: drum
    side: vibrating
  - id: end-left
    kind: end
    moves_with: drum
    side: vibrating
    at_m: [-0.22, 0, 0]
  - id: end-right
    kind: end
    moves_with: drum
    side: vibrating
    at_m: [0.2, 0, 0]
  - id: foot
    kind: foot
    moves_with: frame
    side: still
    pattern:
      type: places
      places:
        - { at_m: [-0.1, -0.2, 0] }
        - { at_m: [0.1, -0.2, 0] }
groups:
  - id: end-bolts
    kind: end-bolt
    moves_with: drum
    side: vibrating
    pattern: { type: circle, count: 4, radius_m: 0.1, start_deg: 0, x_m: 0.22, seen_from: right }
    joins: [end-right, tube]
    thread: { designation: M12, diameter_m: 0.012, pitch_m: 0.00175, class: '8.8' }
    engaged_m: 0.02
    grip_m: 0.02
    tool: { drive: hex, size_m: 0.018 }
relations:
  - { type: weld, unit: body, parts: [tube, end-left] }
  - { type: seat, inner: end-right, outer: tube, fit: face }
`;
