export * from './register';
