/** English, put together from one file a subject. */
import type { Catalogue } from '../catalogue';
import calc from './calc';
import calcMechanics from './calc-mechanics';
import cautions from './cautions';
import faults from './faults';
import parts from './parts';
import shot from './shot';
import stage from './stage';
import ui from './ui';
import units from './units';
import why from './why';

const english: Catalogue = {
  ...ui,
  ...parts,
  ...units,
  ...cautions,
  ...why,
  ...faults,
  ...stage,
  ...shot,
  ...calc,
  ...calcMechanics,
};
export default english;
