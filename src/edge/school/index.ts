export * from './find-api';
export * from './scorm';
