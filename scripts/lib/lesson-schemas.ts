/** JSON Schemas of lesson and bank files, made from their validators. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import {
  courseSchema,
  glossarySchema,
  glossaryTextsSchema,
  lessonSchema,
  lessonTextsSchema,
} from '../../src/core/lessons';
import { bankSchema, bankTextsSchema } from '../../src/core/quiz';

const SCHEMAS: readonly (readonly [string, string, z.ZodType])[] = [
  ['course', 'Drumbench course file', courseSchema],
  ['lesson', 'Drumbench lesson file', lessonSchema],
  ['lesson-texts', 'Drumbench lesson texts', lessonTextsSchema],
  ['bank', 'Drumbench question bank', bankSchema],
  ['bank-texts', 'Drumbench question texts', bankTextsSchema],
  ['glossary', 'Drumbench glossary file', glossarySchema],
  ['glossary-texts', 'Drumbench glossary texts', glossaryTextsSchema],
];

/** Writes them into `folder`; returns the file names. */
export function writeLessonSchemas(folder: string): readonly string[] {
  return SCHEMAS.map(([name, title, schema]) => {
    const file = `${name}.schema.json`;
    const json = z.toJSONSchema(schema, { io: 'input', unrepresentable: 'any' });
    writeFileSync(join(folder, file), `${JSON.stringify({ title, ...json }, null, 1)}\n`);
    return file;
  });
}
