export * from './import-files';
export * from './shot-client';
