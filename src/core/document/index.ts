export * from './types';
export * from './codec';
export * from './graph';
export * from './prepare';
