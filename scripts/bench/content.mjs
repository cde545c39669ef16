// Comparing and auditing 3,000 pairs of texts against a bare word diff of the same pairs, in one process, after the
// language library is loaded. Pairs are the rewritten requirements of the demo (2018 to 2024), each one made different by
// a number of its own, so that no reading can be remembered.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const ROWS = 3000;

export async function run() {
  const { compareTexts } = await import('../../dist/content/compare-texts.js');
  const { lostFrom } = await import('../../dist/content/lost/lost.js');
  const { diffWords } = await import('../../dist/text/word-diff.js');
  const pairs = await demoPairs();
  const rows = (n, offset) =>
    Array.from({ length: n }, (_, i) => {
      const { from, to } = pairs[i % pairs.length];
      return [`${from} Row ${offset + i} stays.`, `${to} Row ${offset + i} stays.`];
    });
  const timed = (work, list) => {
    const start = performance.now();
    for (const [from, to] of list) work(from, to);
    return (performance.now() - start) / 1000;
  };
  const compare = (from, to) => compareTexts(from, to);
  const audit = (from, to) => lostFrom(from, [to]);
  for (const work of [compare, audit, diffWords]) timed(work, rows(50, 900_000));
  const rival = timed(diffWords, rows(ROWS, 0));
  const compared = timed(compare, rows(ROWS, 10_000));
  const audited = timed(audit, rows(ROWS, 20_000));
  const quarter = timed(audit, rows(ROWS / 4, 30_000));
  const row = (name, ours, more, note) => ({ name, ours, rival: more, ratio: ours / more, note });
  return [
    row('compare 3,000 pairs of texts', compared, rival, 'rival: bare word diff; aim: under 5 s'),
    row('audit 3,000 old texts', audited, rival, 'rival: bare word diff; aim: under 5 s'),
    row('audit 3,000 against 750 old texts', audited, quarter, 'rival: 750 of them; 4 is linear, 16 the square'),
  ];
}

/** The texts along the links of the demo whose words changed. */
async function demoPairs() {
  const { makeDemo } = await import('../../dist/commands/importing/make-demo.js');
  const { auditEditions } = await import('../../dist/commands/audit/audit-editions.js');
  const { realFiles } = await import('../../dist/commands/ports/files.js');
  const { openCatalog } = await import('../../dist/store/open.js');
  const folder = mkdtempSync(join(tmpdir(), 'fishplate-bench-'));
  try {
    const dir = join(folder, 'demo.git');
    const author = { name: 'Steward', email: 'steward@example.org' };
    await makeDemo(
      { files: realFiles, now: () => new Date(0), author, random: () => new Uint8Array(), progress: () => {} },
      dir,
    );
    const { retention, items, heirs } = await auditEditions(await openCatalog(dir), '2018', '2024');
    return retention.flatMap(r =>
      r.heirs.flatMap(id => {
        const [from, to] = [items.get(r.item).text, heirs.get(id).text];
        return from && to && from !== to ? [{ from, to }] : [];
      }),
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
