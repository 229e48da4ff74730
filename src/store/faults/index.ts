export * from './state';
export * from './commands';
export { enteredReadings } from './bench';
