export * from './archive';
export * from './summary';
export * from './xapi';
