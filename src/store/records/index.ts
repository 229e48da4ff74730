export * from './state';
export { createRecordsCommands } from './commands';
export { createPackageCommands } from './packages';
