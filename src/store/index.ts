export * from './state';
export * from './transient';
export * from './store';
export * from './ports';
export * from './commands';
export * from './selectors';
