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
  records,
  keep,
};
export const commands = createCommands(appStore, ports);
