/** `calc interference-fit`: pressure, stresses and press force of an interference fit. */
import { z } from 'zod';
import { interferenceFit } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'interference-fit',
  answers: 'calc.interference-fit.answers',
  source:
    'A. C. Ugural, S. K. Fenster, Advanced Strength and Applied Elasticity, ch. 8; R. G. Budynas, J. K. Nisbett, Mechanical Engineering Design (from memory)',
  input: z.object({
    inner_bore_m: notNegative('m'),
    fit_diameter_m: positive('m'),
    outer_diameter_m: positive('m'),
    E_inner_Pa: positive('Pa'),
    E_outer_Pa: positive('Pa'),
    nu_inner: between('1', 0, 0.499),
    nu_outer: between('1', 0, 0.499),
    interference_diametral_m: notNegative('m').optional(),
    pressure_Pa: notNegative('Pa').optional(),
    length_m: positive('m').optional(),
    friction: notNegative('1').optional(),
  }),
  output: z.object({
    interference_diametral_m: outNumber('m'),
    pressure_Pa: outNumber('Pa'),
    hoop_outer_at_fit_Pa: outNumber('Pa'),
    hoop_outer_at_outside_Pa: outNumber('Pa'),
    hoop_inner_at_fit_Pa: outNumber('Pa'),
    hoop_inner_at_bore_Pa: outNumber('Pa'),
    press_force_N: outNumber('N'),
    torque_Nm: outNumber('N m'),
  }),
  example: {
    inner_bore_m: 0,
    fit_diameter_m: 0.1,
    outer_diameter_m: 0.16,
    E_inner_Pa: 206e9,
    E_outer_Pa: 206e9,
    nu_inner: 0.3,
    nu_outer: 0.3,
    interference_diametral_m: 0.00006,
    length_m: 0.08,
    friction: 0.12,
  },
  run: interferenceFit,
});
