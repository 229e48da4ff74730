/** English, put together from one file a subject. */
import type { Catalogue } from '../catalogue';
import stage from './stage';
import ui from './ui';

const english: Catalogue = { ...stage, ...ui };
export default english;
