/** `calc bearing-life`: rating life of a rolling bearing. */
import { z } from 'zod';
import { bearingLife } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { choice, outNumber, positive } from '../fields';

export default defineCalculation({
  name: 'bearing-life',
  answers: 'calc.bearing-life.answers',
  source:
    'ISO 281, (C/P)^p; a1: ISO 281:2007 Table 12 (from memory), ISO 281:1990 (secondary listing); Weibull: U. C. Jindal, Machine Design, ch. 18',
  input: z.object({
    C_N: positive('N'),
    P_N: positive('N'),
    p: z.union([positive('1'), choice('ball', 'roller')]).meta({ unit: '1' }),
    speed_rpm: positive('rpm').optional(),
    reliability_percent: z.number().gt(0).lt(100).meta({ unit: '%' }).optional(),
    edition: choice('2007', '1990').optional(),
    weibull_slope: positive('1').optional(),
  }),
  output: z.object({
    L10_Mrev: outNumber('10^6 rev'),
    L10_h: outNumber('h'),
    a1: outNumber('1'),
    Lnm_Mrev: outNumber('10^6 rev'),
    Lnm_h: outNumber('h'),
  }),
  example: { C_N: 800000, P_N: 125000, p: 'roller', speed_rpm: 1800, reliability_percent: 95 },
  run: bearingLife,
});
