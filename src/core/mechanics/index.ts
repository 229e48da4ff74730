export * from './centrifugal';
export * from './segment';
export * from './packing';
