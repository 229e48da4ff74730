export * from './shipped';
export * from './recordings';
