export * from './keep';
export * from './records';
