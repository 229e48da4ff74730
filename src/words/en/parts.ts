/** Parts by kind: name, what it does, how it fails. Keys `part.<word>.name|does|fails`; word = kind id unless the file says so. */
import drum from './parts-drum';
import fasteners from './parts-fasteners';
import frame from './parts-frame';
import sides from './parts-sides';

const parts = { ...drum, ...sides, ...frame, ...fasteners } as const satisfies Readonly<
  Record<string, string>
>;

export default parts;
