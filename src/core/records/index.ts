export * from './archive';
export * from './summary';
export * from './xapi';
export { type QtiWords, type Unmapped } from './qti/item';
export * from './qti/package';
