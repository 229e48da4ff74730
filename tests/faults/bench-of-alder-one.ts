/** The fault bench of Alder One with its signatures, made once for all tests of a file. */
import { resolve } from 'node:path';
import { createPlant, parseFaultBook, type Plant, signaturesOf } from '../../src/core/faults';
import { parseModel } from '../../src/core/studies';
import { readFaultFolder, readFitFiles, readModelFolder } from '../../src/edge/content/model-files';
import { machine, masses, solids } from '../models/alder-one';

const folder = resolve(import.meta.dirname, '../../models/alder-one');
export const faultFiles = readFaultFolder(folder);
const book = parseFaultBook(faultFiles, machine);
if (!book.ok) throw new Error(JSON.stringify(book.faults.slice(0, 5)));
const model = parseModel([...readModelFolder(folder), ...readFitFiles(folder)]);
if (!model.ok) throw new Error(JSON.stringify(model.faults.slice(0, 5)));
const made = createPlant(machine, solids, masses, model.value.fit, book.value);
if (made === null) throw new Error('the machine has no fault bench');
export const plant: Plant = made;
export const signatures = signaturesOf(plant);
