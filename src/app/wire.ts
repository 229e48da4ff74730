/** Hands the ports of the world to the store's commands. */
import { loadRecordings, loadShipped } from '../edge/content';
import { keep } from '../edge/storage';
import { importFiles, runShot } from '../edge/worker';
import { graph } from './graph';
import { appStore, createCommands } from '../store';

export const store = appStore;
export const commands = createCommands(appStore, {
  loadShipped,
  importFiles,
  shot: { loadRecordings, run: runShot },
  graph,
  keep,
});
