export * from './state';
export * from './commands';
