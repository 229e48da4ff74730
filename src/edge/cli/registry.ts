/**
 * All calculations of `npm run -s calc`, in the order that the list prints them.
 *
 * To add one:
 * 1. `calculations/<name>.ts` default-exports `defineCalculation({ ... })`: a zod object for the input, one for
 *    the output (fields.ts has fields that carry their unit), the source of the formula, an example that works,
 *    and `run`, which calls a function of core and returns `ok({ ...output, notes })` or `fail([...faults])`.
 *    The keys of both are the ones that people type: SI, with the unit in the name.
 * 2. words/en/calc.ts gets `calc.<name>.answers`, and a text for every note or fault key that `run` can return.
 * 3. The import and the entry below. tests/cli/registry.test.ts then runs the example and holds the output
 *    against the described keys; nothing else is needed.
 *
 * What does not exist is null (fields: outNumber, outVector2) with a note, never NaN.
 */
import type { Calculation } from './calculation';
import centrifugal from './calculations/centrifugal';
import segment from './calculations/segment';
import unbalance from './calculations/unbalance';
import bearingLoad from './calculations/bearing-load';
import bearingLife from './calculations/bearing-life';
import bearingDuty from './calculations/bearing-duty';
import bearingSystem from './calculations/bearing-system';
import staticSafety from './calculations/static-safety';
import fittedClearance from './calculations/fitted-clearance';
import endPlay from './calculations/end-play';
import isoFit from './calculations/iso-fit';
import interferenceFit from './calculations/interference-fit';
import heating from './calculations/heating';
import bolt from './calculations/bolt';
import nutFactor from './calculations/nut-factor';
import starSequence from './calculations/star-sequence';
import jointSlip from './calculations/joint-slip';
import rubberMount from './calculations/rubber-mount';
import singleDof from './calculations/single-dof';
import rollerResponse from './calculations/roller-response';
import soilStress from './calculations/soil-stress';
import impactSpacing from './calculations/impact-spacing';
import rollerTime from './calculations/roller-time';
import rollingTime from './calculations/rolling-time';
import hydraulicMotor from './calculations/hydraulic-motor';
import traction from './calculations/traction';
import sling from './calculations/sling';
import twoPointLift from './calculations/two-point-lift';
import liftLimit from './calculations/lift-limit';
import brine from './calculations/brine';
import brineFill from './calculations/brine-fill';
import oilVolume from './calculations/oil-volume';
import alignment from './calculations/alignment';
import itemStatistics from './calculations/item-statistics';
import blocking from './calculations/blocking';
import teardown from './calculations/teardown';
import diagnose from './calculations/diagnose';
import ringFit from './calculations/ring-fit';
import tightRing from './calculations/tight-ring';
import isolatorSet from './calculations/isolator-set';
import rigging from './calculations/rigging';
import hang from './calculations/hang';
import scraperGap from './calculations/scraper-gap';
import amplitudeCheck from './calculations/amplitude-check';
import bearingDamage from './calculations/bearing-damage';
import jobSheet from './calculations/job-sheet';
import vibrationStudy from './calculations/vibration-study';
import isolationStudy from './calculations/isolation-study';
import tractionStudy from './calculations/traction-study';
import sharedPressure from './calculations/shared-pressure';
import compactionStudy from './calculations/compaction-study';
import ballastStudy from './calculations/ballast-study';
import identify from './calculations/identify';

export const CALCULATIONS: readonly Calculation[] = [
  unbalance,
  centrifugal,
  segment,
  bearingLoad,
  bearingLife,
  bearingDuty,
  bearingSystem,
  staticSafety,
  fittedClearance,
  endPlay,
  isoFit,
  interferenceFit,
  heating,
  bolt,
  nutFactor,
  starSequence,
  jointSlip,
  rubberMount,
  singleDof,
  rollerResponse,
  soilStress,
  impactSpacing,
  rollerTime,
  rollingTime,
  hydraulicMotor,
  traction,
  sling,
  twoPointLift,
  liftLimit,
  brine,
  brineFill,
  oilVolume,
  alignment,
  itemStatistics,
  blocking,
  teardown,
  diagnose,
  ringFit,
  tightRing,
  isolatorSet,
  rigging,
  hang,
  scraperGap,
  amplitudeCheck,
  bearingDamage,
  jobSheet,
  vibrationStudy,
  isolationStudy,
  tractionStudy,
  sharedPressure,
  compactionStudy,
  ballastStudy,
  identify,
];
