/** Writes the JSON Schema of machine files, made from the validator, beside the models for editors. */
import { writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { z } from 'zod';
import { machineFileSchema } from '../src/core/machine';
import { writeLessonSchemas } from './lib/lesson-schemas';

const schema = z.toJSONSchema(machineFileSchema, { io: 'input', unrepresentable: 'any' });
const target = join(resolve(import.meta.dirname, '..'), 'models', 'machine.schema.json');
writeFileSync(target, `${JSON.stringify({ title: 'Drumbench machine file', ...schema }, null, 1)}\n`);
console.log(`models/machine.schema.json written`);
for (const file of writeLessonSchemas(join(resolve(import.meta.dirname, '..'), 'lessons')))
  console.log(`lessons/${file} written`);
