export * from './types';
export * from './codec';
export * from './graph';
export * from './kind-solids';
export * from './prepare';
