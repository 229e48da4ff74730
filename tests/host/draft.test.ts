/** A sheet that was drawn and not yet begun is there again when the host is. */
import { readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { readDraft } from '../../src/edge/host/draft-file';
import { deleteClass } from '../../src/edge/host/folder';
import { secretsOf } from '../../src/edge/host/secrets';
import { EVERYTHING, hostHere, instructor, temporaryFolder } from './client';

it('keeps the drawn sheet, as it was changed, over a stop; begun, it is no draft any more', async () => {
  const folder = temporaryFolder();
  const secrets = secretsOf(folder);
  const first = await hostHere(folder);
  const teacher = await instructor({ port: first.port, secrets });
  await teacher.ask({ type: 'draw', wish: EVERYTHING });
  await teacher.ask({ type: 'drop', number: 0 });
  await teacher.ask({ type: 'shift', number: 0, by: 1 });
  const items = async (of: typeof teacher): Promise<readonly unknown[]> => {
    of.send({ type: 'keys', id: 'k' });
    return (await of.next('keys')).items;
  };
  const drawn = await items(teacher);
  expect(drawn.length).toBeGreaterThan(2);
  await first.close();

  const again = await hostHere(folder);
  const back = await instructor({ port: again.port, secrets });
  expect(readDraft(folder)).toHaveLength(drawn.length);
  const ids = (list: readonly unknown[]): readonly unknown[] =>
    list.map((item) => (item as { kind: string }).kind);
  expect(ids(await items(back))).toEqual(ids(drawn));
  await back.ask({ type: 'begin' });
  expect(readDraft(folder)).toBeNull();
  await again.close();
});

it('takes a damaged sheet for none, and deleting the class deletes it', () => {
  const folder = temporaryFolder();
  for (const text of ['{', '[{"item":{"kind":"riddle"}}]', '{"a":1}']) {
    writeFileSync(join(folder, 'draft.json'), text);
    expect(readDraft(folder)).toBeNull();
  }
  expect(deleteClass(folder)).toBe(1);
  expect(() => readdirSync(folder)).toThrow();
});
