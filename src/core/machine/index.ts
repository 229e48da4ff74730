export * from './builders';
export * from './schema';
export * from './machine';
export * from './query';
export * from './parse';
export { relationRefs } from './references';
