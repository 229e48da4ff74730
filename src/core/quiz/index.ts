export * from './item-statistics';
