export * from './state';
export * from './visit';
export * from './session';
