export * from './state';
export * from './day';
export { applyStage, giveStageBack, stepThatTakes } from './stage';
export { createLessonCommands, ensureCourse, ensureTopic, LESSON_RECORDS } from './commands';
