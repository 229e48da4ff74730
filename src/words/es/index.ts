/** Spanish, put together from one file a subject; not yet reviewed by a native tradesperson. */
import type { Catalogue } from '../catalogue';
import calc from './calc';
import calcMechanics from './calc-mechanics';
import cautions from './cautions';
import exports from './export';
import classHost from './class-host';
import classWords from './class';
import faults from './faults';
import faultBench from './fault-bench';
import orderQuestions from './order-questions';
import learn from './learn';
import lessonFaults from './lesson-faults';
import jobSheet from './job-sheet';
import jobs from './jobs';
import packages from './packages';
import parts from './parts';
import practice from './practice';
import practicePlace from './practice-place';
import questionPlots from './question-plots';
import questions from './questions';
import records from './records';
import settled from './settled';
import shot from './shot';
import stage from './stage';
import studies from './studies';
import ui from './ui';
import units from './units';
import views from './views';
import why from './why';

const spanish: Catalogue = {
  ...ui,
  ...parts,
  ...units,
  ...cautions,
  ...exports,
  ...classHost,
  ...classWords,
  ...views,
  ...why,
  ...faults,
  ...faultBench,
  ...lessonFaults,
  ...learn,
  ...orderQuestions,
  ...practice,
  ...practicePlace,
  ...questionPlots,
  ...questions,
  ...stage,
  ...studies,
  ...records,
  ...packages,
  ...settled,
  ...shot,
  ...calc,
  ...calcMechanics,
  ...jobSheet,
  ...jobs,
};
export default spanish;
