import { expect, it } from 'vitest';
import { auditEditions } from '../../src/commands/audit/audit-editions.ts';
import { readCrosswalkRows } from '../../src/commands/databases/database-crosswalk.ts';
import { branchOf } from '../../src/commands/drafts/branch-draft.ts';
import { operateOnDraft } from '../../src/commands/drafts/draft-operations.ts';
import { readEditionTexts } from '../../src/commands/reading/edition-texts.ts';
import { readCrosswalk } from '../../src/commands/reading/read-crosswalk.ts';
import { traceNumber } from '../../src/commands/reading/trace-number.ts';
import { releaseGate } from '../../src/commands/releasing/release-gate.ts';
import { isPair } from '../../src/content/links/marks.ts';
import { tellTrace } from '../../src/content/links/tell.ts';
import type { WrittenOperation } from '../../src/format/operation-lines.ts';
import { catalogWithDraft } from './small-catalog.ts';

const OWN = 'Gutters shall be set by the roofer.';

/** A draft that says nothing new, and a branch of it on which operations were done. */
async function branchWith(...operations: readonly WrittenOperation[]) {
  const { catalog, ports } = await catalogWithDraft(
    'Operatives shall wear hard hats of 3 mm, except where it rains, so that no one is hurt at',
  );
  await branchOf(catalog, 'roofs', '2030');
  await operateOnDraft(ports, catalog, { draft: 'roofs', operations });
  return { catalog, ports };
}

it('a crosswalk, its texts and its tables for a database are read from the branch that was named, not from its draft', async () => {
  const { catalog } = await branchWith({ op: 'reword', id: '1.1', to: { text: OWN } });
  const { joint, marks } = await readCrosswalk(catalog, '2018', 'roofs');
  const link = joint.crosswalk.links.filter(isPair).find(l => l.from === 'w1a')!;
  expect(marks(link)).toMatchObject({ wording: 'substantive' });
  expect((await readEditionTexts(catalog, joint)).to('w1a')).toBe(OWN);
  expect(JSON.stringify(await readCrosswalkRows(catalog, { joint, marks }))).toContain(OWN);
});

it('an item that stands on a branch alone is read there', async () => {
  const keeps = { title: 'Gutters', text: 'Set gutters.' };
  const gives = [{ level: 2, parent: 'w1', number: '1.3', title: 'Pipes', text: 'Set pipes.' }];
  const { catalog } = await branchWith({ op: 'split', id: '1.1', keeps, gives } as unknown as WrittenOperation);
  const { joint, marks } = await readCrosswalk(catalog, '2018', 'roofs');
  const links = joint.leaving('w1a').filter(isPair);
  expect(links.map(l => joint.new.get(l.to)!.title)).toEqual(['Gutters', 'Pipes']);
  expect(links.map(l => marks(l).wording)).not.toContain('same');
});

it('a number is traced in the branch that was named, and the branch says where it comes from', async () => {
  const keeps = { title: 'Gutters', text: 'Set gutters.' };
  const gives = [{ level: 2, parent: 'w1', number: '1.3', title: 'Pipes', text: 'Set pipes.' }];
  const { catalog } = await branchWith({ op: 'split', id: '1.1', keeps, gives } as unknown as WrittenOperation);
  const told = (await traceNumber(catalog, { number: '1.2', edition: 'roofs' })).map(tellTrace);
  expect(told).toEqual([['1.2 "Pipes" stands in 2030, a draft.', expect.stringMatching(/^It comes from 1\.1 /)]]);
  const traced = async (edition: string) =>
    (await traceNumber(catalog, { number: '1.2', edition })).map(t => [
      t.entry.title,
      t.origin?.sources.map(e => e.number),
    ]);
  const [inBranch, inDraft] = [await traced('roofs'), await traced('2030')];
  expect(inBranch).toEqual([['Pipes', ['1.1']]]);
  expect(inDraft).not.toEqual(inBranch);
});

it('the audit and the gate of a branch ask what the branch says and has decided', async () => {
  const decision = { id: 'worker-safety', title: 'Safety', reason: 'Law.', authority: 'Board', scope: 'All.' };
  const { catalog, ports } = await branchWith(
    { op: 'reword', id: '2.1', to: { text: 'See 9.9.' } },
    { op: 'decide', decision },
  );
  const states = async (name: string) =>
    (await auditEditions(catalog, '2018', name)).lines.map(l => `${l.item} ${l.state}`);
  expect(new Set(await states('roofs'))).toEqual(new Set(['w2a decision']));
  expect(await states('2030')).toEqual([]);
  const asked = async (name: string) => {
    const { stops } = await releaseGate(ports, catalog, name);
    return [...new Set(stops.map(f => f.subject))];
  };
  expect(await asked('roofs')).toEqual(['w1a', 'w3a']);
  expect(await asked('2030')).toEqual(['w1a', 'w2a', 'w3a']);
});
