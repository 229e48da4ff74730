export * from './vibrating-mass';
export * from './overlap';
export * from './check-model';
export * from './exciter-basis';
export * from './exciter';
