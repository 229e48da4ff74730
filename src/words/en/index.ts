/** English, put together from one file a subject. */
import type { Catalogue } from '../catalogue';
import ui from './ui';

const english: Catalogue = { ...ui };
export default english;
