export * from './result';
export * from './vec';
export * from './random';
export * from './units';
export * from './checks';
export * from './hash';
export * from './json-lines';
