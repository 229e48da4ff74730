/** The numbers of the plots that questions ask to be read, from the machine at hand. */
import { STANDARD_GRAVITY } from '../kernel';
import { bearingLife, lineLoadStress, sling } from '../mechanics';
import { exciterStudy, isolationStudy, OWN_CHOICE, rollerBasis, SOILS } from '../studies';
import { type Curve, steps } from './curve';
import { pullOverGrade, slipOverPreload, torqueOverPressure, turnOverSteering } from './curves-drive';
import type { PlotName } from './picture';
import type { Subject } from './subject';

/** Null where the machine has not what the plot is about. */
export function plotCurve(subject: Subject, plot: PlotName): Curve | null {
  const { machine, solids, masses, fit } = subject;
  const { operation } = machine;
  const study = exciterStudy(machine, solids, masses, OWN_CHOICE, fit);
  const basis = rollerBasis(machine, solids, masses);
  const high = study?.high.value ?? null;
  switch (plot) {
    case 'force-over-frequency': {
      if (study === null) return null;
      const values = steps(0, 40, 40);
      const force = (U_kgm: number | undefined) =>
        values.map((f) => (U_kgm === undefined ? null : U_kgm * (2 * Math.PI * f) ** 2));
      return {
        x: { key: 'frequency_Hz', quantity: 'frequency', values },
        y: { key: 'force_N', quantity: 'force-large' },
        lines: [force(study.high.value?.U_kgm), force(study.low.value?.U_kgm)],
      };
    }
    case 'stress-over-depth': {
      const line_N_m = (operation.drum_axle_mass_kg * STANDARD_GRAVITY) / machine.drumWidth_m;
      const values = steps(0.1, 2, 38);
      return {
        x: { key: 'depth_m', quantity: 'length', values, downwards: true },
        y: { key: 'pressure_Pa', quantity: 'pressure-soil' },
        lines: [values.map((depth_m) => lineLoadStress(line_N_m, 0, depth_m))],
      };
    }
    case 'transmissibility': {
      if (basis === null || high === null) return null;
      const { stiffness_N_m, damping_Ns_m } = SOILS.find(({ id }) => id === 'loose')!;
      const { hardness_IRHD } = basis.isolation;
      const found = isolationStudy(basis, {
        unbalance_kgm: high.U_kgm,
        frequency_Hz: operation.frequency_high_Hz,
        soil_stiffness_N_m: stiffness_N_m,
        soil_damping_Ns_m: damping_Ns_m,
        hardness_left_IRHD: hardness_IRHD,
        hardness_right_IRHD: hardness_IRHD,
        states: {},
        crack_share: 0,
        hours_a_day: 1,
      });
      if (found === null) return null;
      return {
        x: { key: 'frequency_Hz', quantity: 'frequency', values: found.curve.map((p) => p.frequency_Hz) },
        y: { key: 'share', quantity: 'plain' },
        lines: [found.curve.map((p) => p.left), found.curve.map((p) => p.right)],
        mark: operation.frequency_high_Hz,
      };
    }
    case 'sling-leg': {
      const degrees = steps(30, 90, 30);
      return {
        x: { key: 'angle_rad', quantity: 'angle', values: degrees.map((deg) => (deg * Math.PI) / 180) },
        y: { key: 'factor', quantity: 'plain' },
        lines: [
          degrees.map((angle_from_horizontal_deg) => {
            const leg = sling({ mass_kg: 1, legs: 2, angle_from_horizontal_deg });
            return leg.ok ? leg.value.factor : null;
          }),
        ],
      };
    }
    case 'bearing-life': {
      if (high === null) return null;
      const values = steps(0.6, 1.6, 40);
      return {
        x: { key: 'load_share', quantity: 'share', values },
        y: { key: 'life_h', quantity: 'hours' },
        lines: [
          values.map((share) => {
            const life = bearingLife({
              C_N: operation.bearings.C_N,
              P_N: share * high.bearing_right_N,
              p: 'roller',
              speed_rpm: 60 * operation.frequency_high_Hz,
            });
            return life.ok ? life.value.L10_h : null;
          }),
        ],
        mark: 1,
      };
    }
    case 'amplitude-over-ballast': {
      if (basis === null || high === null) return null;
      const values = steps(0, 2000, 40);
      return {
        x: { key: 'liquid_kg', quantity: 'mass', values },
        y: { key: 'amplitude_m', quantity: 'length-small' },
        lines: [values.map((mass_kg) => high.U_kgm / (basis.vibratingMass_kg + mass_kg))],
      };
    }
    case 'pull-over-grade':
      return pullOverGrade(machine);
    case 'torque-over-pressure':
      return torqueOverPressure(machine);
    case 'turn-over-steering':
      return turnOverSteering(machine);
    case 'slip-over-preload':
      return high === null ? null : slipOverPreload(machine, high.force_N);
  }
}
