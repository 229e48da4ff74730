export * from './state';
export * from './commands';
export * from './shake';
