export * from './schema';
export * from './parse';
export * from './course';
export * from './references';
export * from './player';
