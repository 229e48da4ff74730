export * from './state';
export { createRecordsCommands } from './commands';
