export * from './state';
export * from './commands';
export { jobBase, stageAt } from './sheet';
export { JOB_DAMAGED, JOB_HISTORY, JOB_MEASURED, JOB_RECORDS } from './kept';
