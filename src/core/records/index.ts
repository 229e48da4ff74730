export * from './archive';
export * from './summary';
