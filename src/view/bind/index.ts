export * from './context';
export * from './motion';
export * from './words';
