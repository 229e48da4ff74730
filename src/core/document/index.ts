export * from './types';
export * from './codec';
export * from './prepare';
