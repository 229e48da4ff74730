export * from './stage-picture';
