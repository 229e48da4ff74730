export * from './builders';
export * from './schema';
export * from './machine';
