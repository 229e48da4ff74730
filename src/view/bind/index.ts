export * from './context';
export * from './words';
