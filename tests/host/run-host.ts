/** A host in a process of its own, so that it can be killed: `run-host.ts FOLDER PORT`. Prints its port once it listens. */
import { hostHere } from './client';

const [data, port] = process.argv.slice(2);
const host = await hostHere(data!, Number(port));
console.log(`listening ${host.port}`);
