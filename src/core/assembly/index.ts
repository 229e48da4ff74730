export * from './types';
export * from './message-keys';
export {
  type BlockingGraph,
  buildGraph,
  type GraphOptions,
  straightBlockers,
  strikeDistance_m,
} from './graph';
export { DIRECTIONS, type Blocker, type Way } from './way';
export type { Joint, JointKind } from './joints';
export type { Masses, Solids } from './world';
export { planOnGraph, type PlanOptions, planTeardown } from './plan';
export { buildExplode, explodeOffsetsAt } from './explode';
export { buildTimeline, poseOffsetsAt } from './timeline';
export { reversePlan } from './assembly-plan';
export { type Contact, type Verdict, verifyPlan, type VerifyOptions } from './verify';
export { type LayoutContact, verifyLayout } from './verify-layout';
