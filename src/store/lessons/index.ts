export * from './state';
export * from './day';
export { createLessonCommands, ensureCourse, ensureTopic, LESSON_RECORDS } from './commands';
