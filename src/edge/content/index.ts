export * from './graph';
export * from './shipped';
export * from './recordings';
export * from './jobs';
export * from './faults';
export * from './lessons';
