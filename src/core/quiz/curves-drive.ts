/** Plots of the travel drive, the joint of the frames and the joint of the hub. */
import type { Machine } from '../machine';
import { hydraulicMotor } from '../mechanics';
import { GROUNDS, turning, twoSpeedStudy } from '../studies';
import { type Curve, steps } from './curve';
import { frictionJoint } from './values/workshop';

export function pullOverGrade(machine: Machine): Curve | null {
  const ground = GROUNDS.find(({ id }) => id === 'clay-wet')!;
  const { drive } = machine;
  if (drive === undefined) return null;
  const values = steps(0, 40, 40);
  const both = values.map(
    (grade_percent) =>
      twoSpeedStudy(machine, {
        grade_percent,
        speed_m_s: 1,
        drum_adhesion: ground.drum,
        axle_adhesion: ground.tyre,
        rolling_resistance_N_per_N: ground.rolling_resistance,
        relief_Pa: drive.relief_Pa,
      })?.combinations.find((each) => each.drum_range === 'low' && each.axle_range === 'low')?.traction,
  );
  return {
    x: { key: 'grade_percent', quantity: 'percent', values },
    y: { key: 'pull_N', quantity: 'force-large' },
    lines: [
      both.map((each) => each?.pull_needed_N ?? null),
      both.map((each) => each?.pull_available_N ?? null),
    ],
  };
}

export function torqueOverPressure({ drive }: Machine): Curve | null {
  if (drive === undefined) return null;
  const values = steps(0, drive.relief_Pa, 40);
  const torque = (displacement_m3_rev: number) =>
    values.map((pressure_Pa) => {
      const motor = hydraulicMotor({
        displacement_m3_rev,
        pressure_Pa,
        eta_mechanical: drive.drum.efficiency,
      });
      return motor.ok ? motor.value.torque_Nm : null;
    });
  return {
    x: { key: 'pressure_Pa', quantity: 'pressure', values },
    y: { key: 'torque_Nm', quantity: 'torque' },
    lines: [torque(drive.drum.displacement_low_m3_rev), torque(drive.drum.displacement_high_m3_rev)],
  };
}

export function turnOverSteering({ articulation, drumWidth_m }: Machine): Curve | null {
  if (articulation === undefined) return null;
  const degrees = steps(5, articulation.steering_limit_deg, 30);
  return {
    x: { key: 'steering_rad', quantity: 'angle', values: degrees.map((deg) => (deg * Math.PI) / 180) },
    y: { key: 'radius_m', quantity: 'length' },
    lines: [
      degrees.map(
        (steering_limit_deg) => turning({ ...articulation, steering_limit_deg }, drumWidth_m).drum_radius_m,
      ),
    ],
  };
}

export function slipOverPreload(machine: Machine, force_N: number): Curve | null {
  const values = steps(0, 1, 40);
  const slip = values.map((share) => frictionJoint(machine, 'hub-bolts', share)?.slip_N ?? null);
  if (slip.every((each) => each === null)) return null;
  return {
    x: { key: 'preload_share', quantity: 'share', values },
    y: { key: 'slip_N', quantity: 'force-large' },
    lines: [slip, values.map(() => force_N)],
  };
}
