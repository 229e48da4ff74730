export * from './import-files';
