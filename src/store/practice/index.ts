export * from './state';
export { type Confirmation, confirmations } from './confirmations';
export { createPracticeCommands } from './commands';
export type { LessonHelp } from './lesson-help';
export { PRACTICE_RECORDS } from './kept';
