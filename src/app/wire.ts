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
  keep,
};
export const commands = createCommands(appStore, ports);
