export * from './centrifugal';
export * from './segment';
export * from './packing';
export type { BaffleSection, ChamberSection } from './unbalance/section';
export * from './unbalance/settled';
export * from './unbalance/exciter';
export * from './unbalance/open-chamber';
export * from './unbalance/bearing-loads';
