export * from './keep';
