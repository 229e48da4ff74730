/** Hands the ports of the world to the store's commands. */
import {
  loadCourse,
  loadFaults,
  loadGlossary,
  loadJobPlan,
  loadJobs,
  loadRecordings,
  loadShipped,
  loadTopic,
} from '../edge/content';
import { keep, records } from '../edge/storage';
import { importFiles, runShot } from '../edge/worker';
import { graph } from './graph';
import { appStore, createCommands, type Ports } from '../store';

export const store = appStore;
export const ports: Ports = {
  loadShipped,
  importFiles,
  shot: { loadRecordings, run: runShot },
  graph,
  loadFaults,
  course: { loadCourse, loadTopic, loadGlossary },
  jobs: { loadJobs, loadPlan: loadJobPlan },
  // Few pages come from a class host: the way to it is fetched when somebody goes to class.
  classroom: {
    greet: async () => (await import('../edge/link')).greetClass(),
    link: async (listener) => (await import('../edge/link')).linkClass(listener),
  },
  records,
  // Few people send records to a school or pack lessons for it: the way there is fetched when somebody does.
  recordStore: {
    send: async (access, statements) => (await import('../edge/school')).sendStatements(access, statements),
  },
  packages: {
    files: async () => (await import('../edge/school')).appFiles(),
    make: async (files, settings, words, onProgress) => {
      const { readAppFile, zipPackage } = await import('../edge/school');
      return zipPackage({ files, read: readAppFile }, settings, words, onProgress);
    },
  },
  keep,
};
export const commands = createCommands(appStore, ports);
