/** `calc hydraulic-motor`: torque, speed, power and flow of a hydraulic motor. */
import { z } from 'zod';
import { hydraulicMotor } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, notNegative, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'hydraulic-motor',
  answers: 'calc.hydraulic-motor.answers',
  source:
    'A. Esposito, Fluid Power with Applications, ch. 7; J. Sullivan, Fluid Power Theory & Applications, ch. 9',
  input: z.object({
    displacement_m3_rev: positive('m3/rev'),
    pressure_Pa: notNegative('Pa'),
    flow_m3_s: notNegative('m3/s').optional(),
    speed_rpm: notNegative('rpm').optional(),
    eta_volumetric: between('1', 0.01, 1).optional(),
    eta_mechanical: between('1', 0.01, 1).optional(),
    measured_torque_Nm: notNegative('N m').optional(),
  }),
  output: z.object({
    torque_Nm: outNumber('N m'),
    speed_rpm: outNumber('rpm'),
    power_W: outNumber('W'),
    flow_m3_s: outNumber('m3/s'),
    eta_volumetric: outNumber('1'),
    eta_mechanical: outNumber('1'),
    eta_overall: outNumber('1'),
  }),
  example: { displacement_m3_rev: 0.0037, pressure_Pa: 40e6, speed_rpm: 15, eta_mechanical: 0.92 },
  run: hydraulicMotor,
});
