export * from './graph-client';
export * from './import-files';
export * from './shot-client';
