/** A prepared machine as one block of bytes, for the disk and for a worker's port. */
import { type BlockForm, decodeBlock, encodeBlock } from './block';
import type { MachineDocument } from './types';

const FORM: BlockForm = { name: 'a prepared machine', magic: 0x424d5244, format: 1 };
export const DOCUMENT_FORMAT = FORM.format;

/** The document as bytes; throws on anything that JSON cannot carry besides typed arrays. */
export const encodeDocument = (document: MachineDocument): Uint8Array<ArrayBuffer> =>
  encodeBlock(FORM, document);

/** The document of a block made by `encodeDocument`; throws when the block is another thing or was cut short. */
export const decodeDocument = (buffer: ArrayBuffer): MachineDocument =>
  decodeBlock(FORM, buffer) as MachineDocument;
