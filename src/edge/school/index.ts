export * from './app-files';
export * from './find-api';
export * from './scorm';
export * from './zip-package';
export * from './record-store';
export * from './cmi5';
