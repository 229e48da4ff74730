export * from './graph';
export * from './shipped';
export * from './recordings';
export * from './jobs';
