import { join } from 'node:path';
import { expect, it } from 'vitest';
import { refuseUnbundled } from '../../src/commands/bundles/can-bundle.ts';
import { saveDraft } from '../../src/store/write-draft.ts';
import { catalogWithDraft } from '../release/small-catalog.ts';
import { AUTHOR, nativeGit, smallEdition } from '../store/temp-catalog.ts';
import { fishplateHere } from './run-here.ts';

it('what a bundle would lack is said before the tag is set, with what to do', async () => {
  const { catalog, dir } = await catalogWithDraft();
  const missing = join(dir, 'carry.js');
  await expect(refuseUnbundled(catalog, '2030', missing)).rejects.toThrow(
    /lack the page that carries files over: .*Nothing is published yet; ask whoever installed .*npm run build.*publish without --bundle/,
  );
  await expect(refuseUnbundled(catalog, '2030', join(dir, 'HEAD'))).resolves.toBeUndefined();
});

it('a draft that replaces nothing is not published with a bundle that cannot be made', async () => {
  const { catalog, dir } = await catalogWithDraft();
  await saveDraft(catalog, smallEdition('2040', null, 'Set'), AUTHOR, 'Draft 2040');
  const { status, stderr } = await fishplateHere(
    '--catalog',
    dir,
    'publish',
    '2040',
    '--bundle',
    join(dir, '..', 'out'),
  );
  expect([status, stderr]).toEqual([2, expect.stringContaining('publish it without --bundle')]);
  expect(nativeGit(dir, 'tag')).not.toContain('2040');
});
