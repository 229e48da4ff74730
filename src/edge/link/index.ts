export * from './class-link';
