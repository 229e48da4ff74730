export * from './state';
export { createClassCommands, type HostOrder } from './commands';
