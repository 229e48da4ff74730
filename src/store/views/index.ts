export * from './state';
export * from './picture';
export * from './commands';
