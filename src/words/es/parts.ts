/** Parts by kind, Spanish text (not yet reviewed by a native tradesperson): name, what it does, how it fails. Keys as in the English file. */
import drum from './parts-drum';
import fasteners from './parts-fasteners';
import frame from './parts-frame';
import sides from './parts-sides';

const parts = { ...drum, ...sides, ...frame, ...fasteners } as const satisfies Readonly<
  Record<string, string>
>;

export default parts;
