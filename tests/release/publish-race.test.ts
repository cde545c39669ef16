import { expect, it } from 'vitest';
import { operateOnDraft } from '../../src/commands/drafts/draft-operations.ts';
import { checkCatalog } from '../../src/commands/reading/check-catalog.ts';
import { publishDraft } from '../../src/commands/releasing/publish-draft.ts';
import { openForWriting } from '../../src/store/open.ts';
import { readIndex } from '../../src/store/read.ts';
import { fsWithSecondWriter } from '../store/second-writer.ts';
import { nativeGit } from '../store/temp-catalog.ts';
import { catalogWithDraft } from './small-catalog.ts';

it('a draft that somebody works on while the gate reads is not published; published again, it agrees with its table', async () => {
  const { catalog, ports, dir } = await catalogWithDraft();
  const { fs, before } = fsWithSecondWriter();
  const publishing = await openForWriting(dir, fs);
  // The gate reads what people answered, which stands on main.
  before(1, 'refs/heads/main', () => {
    const operations = [{ op: 'retitle' as const, id: '1.1', title: 'Written meanwhile' }];
    return operateOnDraft(ports, catalog, { draft: '2030', operations });
  });
  const request = { draft: '2030', override: 'so' };
  await expect(publishDraft(ports, publishing, request)).rejects.toThrow(
    'Somebody has worked on 2030 since it was read',
  );
  expect(nativeGit(dir, 'tag', '-l', 'edition/2030.0')).toBe('');
  await publishDraft(ports, publishing, request);
  const altered = (await checkCatalog(catalog, '2030')).findings.filter(f => f.rule === 'edition-altered');
  expect(altered).toEqual([]);
  expect((await readIndex(catalog, '2030')).entries.map(e => e.title)).toContain('Written meanwhile');
});
