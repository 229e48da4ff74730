/** Writes the JSON Schema of machine files, made from the validator, beside the models for editors. */
import { writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { z } from 'zod';
import { faultFileSchema } from '../src/core/faults';
import { jobFileSchema } from '../src/core/jobs';
import { machineFileSchema } from '../src/core/machine';
import { writeLessonSchemas } from './lib/lesson-schemas';

const schema = z.toJSONSchema(machineFileSchema, { io: 'input', unrepresentable: 'any' });
const target = join(resolve(import.meta.dirname, '..'), 'models', 'machine.schema.json');
writeFileSync(target, `${JSON.stringify({ title: 'Drumbench machine file', ...schema }, null, 1)}\n`);
console.log(`models/machine.schema.json written`);
const jobSchema = z.toJSONSchema(jobFileSchema, { io: 'input', unrepresentable: 'any' });
writeFileSync(
  join(resolve(import.meta.dirname, '..'), 'models', 'job.schema.json'),
  `${JSON.stringify({ title: 'Drumbench job file', ...jobSchema }, null, 1)}\n`,
);
console.log(`models/job.schema.json written`);
const faultSchema = z.toJSONSchema(faultFileSchema, { io: 'input', unrepresentable: 'any' });
writeFileSync(
  join(resolve(import.meta.dirname, '..'), 'models', 'faults.schema.json'),
  `${JSON.stringify({ title: 'Drumbench fault file', ...faultSchema }, null, 1)}\n`,
);
console.log(`models/faults.schema.json written`);
for (const file of writeLessonSchemas(join(resolve(import.meta.dirname, '..'), 'lessons')))
  console.log(`lessons/${file} written`);
