/** From what a job asks for to numbers; one function a kind of question. */
import type { NumberSpec } from '../number-specs';
import type { SheetNumber } from '../sheet-types';
import type { NumberContext } from './context';
import { amplitudeNumbers, bearingLifeNumbers, jointSlipNumbers } from './exciter';
import { isolatorNumbers, setMatchNumbers, shimNumbers } from './isolators';
import { clearanceNumbers, fitNumbers, heatingNumbers, pressNumbers, tightRingNumbers } from './seats';
import { endPlayNumbers, oilNumbers, riggingNumbers, scraperNumbers, towPullNumbers } from './service';

/** Empty where the machine lacks what the number is made from. */
export function numbersFor(context: NumberContext, spec: NumberSpec): SheetNumber[] {
  switch (spec.number) {
    case 'fit':
      return fitNumbers(context, spec);
    case 'press':
      return pressNumbers(context, spec);
    case 'heating':
      return heatingNumbers(context, spec);
    case 'clearance':
      return clearanceNumbers(context, spec);
    case 'tight-ring':
      return tightRingNumbers(context, spec);
    case 'bearing-life':
      return bearingLifeNumbers(context, spec);
    case 'joint-slip':
      return jointSlipNumbers(context, spec);
    case 'isolators':
      return isolatorNumbers(context, spec);
    case 'set-match':
      return setMatchNumbers(context, spec);
    case 'shims':
      return shimNumbers(context, spec);
    case 'end-play':
      return endPlayNumbers(context, spec);
    case 'scrapers':
      return scraperNumbers(context, spec);
    case 'oil':
      return oilNumbers(context, spec);
    case 'amplitude':
      return amplitudeNumbers(context);
    case 'rigging':
      return riggingNumbers(context, spec);
    case 'tow-pull':
      return towPullNumbers(context, spec);
  }
}
