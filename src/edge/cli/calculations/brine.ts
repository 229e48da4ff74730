/** `calc brine`: density and freezing point of calcium chloride brine. */
import { z } from 'zod';
import { brine } from '../../../core/mechanics';
import { defineCalculation } from '../calculation';
import { between, outNumber } from '../fields';

export default defineCalculation({
  name: 'brine',
  answers: 'calc.brine.answers',
  source:
    'CoolProp 8.0.0, INCOMP::MCA (CaCl2 brine after A. Melinder), tabulated; water: IAPWS (from memory)',
  input: z.object({ salt_mass_percent: between('%', 0, 30), temperature_C: between('degC', -40, 40) }),
  output: z.object({
    density_kg_m3: outNumber('kg/m3'),
    freezing_C: outNumber('degC'),
  }),
  example: { salt_mass_percent: 25, temperature_C: 15 },
  run: brine,
});
