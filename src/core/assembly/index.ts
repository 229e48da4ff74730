export * from './types';
export * from './message-keys';
export { buildGraph, type GraphOptions } from './build-graph';
export { type BlockingGraph, straightBlockers, strikeDistance_m } from './graph';
export { DIRECTIONS, type Blocker, type Way } from './way';
export type { Joint, JointKind } from './joints';
export type { Masses, Solids } from './world';
export { planOnGraph, type PlanOptions, planTeardown } from './plan';
export { buildExplode, explodeOffsetsAt } from './explode';
export { buildTimeline, poseOffsetsAt } from './timeline';
export { withSupports } from './supports';
export { reversePlan } from './assembly-plan';
export { type Contact, type Verdict, verifyPlan, type VerifyOptions } from './verify';
export { type LayoutContact, verifyLayout } from './verify-layout';
export * from './practice/types';
export { practiceBench, type PracticeBench } from './practice/bench';
export {
  isDone,
  leastWalk,
  legalNow,
  openBodies,
  placeOf,
  startPractice,
  tryUnit,
  undoMove,
  withTime,
} from './practice/run';
export { askHint, type Hint, type HintKind, type Region } from './practice/hint';
export { POINTS, type PracticeScore, scoreOf } from './practice/score';
export { type Laid, type Laying, layMove, startLaid } from './practice/laying';
export { PRACTICE_SCHEMA, resumePractice, savePractice } from './practice/saved';
export { type Bar, type Freedom, freedomOf } from './freedom';
export { baseBody, freeableWithout, neededBefore } from './freeable';
