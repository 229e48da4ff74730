import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { machineFileSchema } from '../../src/core/machine';

const models = join(resolve(import.meta.dirname, '../..'), 'models');

describe('the published schema', () => {
  it('is the one that the validator gives (npm run schemas)', () => {
    const kept = JSON.parse(readFileSync(join(models, 'machine.schema.json'), 'utf8')) as object;
    const now = z.toJSONSchema(machineFileSchema, { io: 'input', unrepresentable: 'any' });
    expect(kept).toEqual({ title: 'Drumbench machine file', ...now });
  });

  it('is named on top of every machine file, so that an editor helps', () => {
    for (const folder of readdirSync(models, { withFileTypes: true }).filter((e) => e.isDirectory())) {
      for (const name of readdirSync(join(models, folder.name)).filter(
        (n) => n.endsWith('.yaml') && n !== 'fit.yaml',
      )) {
        const first = readFileSync(join(models, folder.name, name), 'utf8').split('\n')[0];
        expect(first, name).toBe('# yaml-language-server: $schema=../machine.schema.json');
      }
    }
  });
});
