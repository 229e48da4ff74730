export * from './overlap';
export * from './check-model';
