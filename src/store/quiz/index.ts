export * from './state';
export * from './subject';
export { ANSWER_RECORDS, createQuizCommands, REVIEW_RECORDS, TEST_RECORDS } from './commands';
