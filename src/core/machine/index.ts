export * from './builders';
export * from './schema';
export * from './machine';
export * from './query';
export * from './cautions';
export * from './parse';
export * from './read-yaml';
export { relationRefs } from './references';
export * from './part-joints';
