import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { carryPassages } from '../../../src/carryover/documents/passages.ts';
import type { MarksOf } from '../../../src/carryover/resolve.ts';
import type { EditionTexts } from '../../../src/carryover/stale/old-sayings.ts';
import { type StaleContent, staleFinder } from '../../../src/carryover/stale/stale-content.ts';
import type { Joint } from '../../../src/crosswalk/joint.ts';
import { readDocument } from '../../../src/documents/read-document.ts';

interface Labelled {
  readonly text: string;
  readonly stale: readonly { readonly items: readonly string[]; readonly says: string }[];
}

export interface Judged {
  readonly right: number;
  readonly found: number;
  readonly wanted: number;
  /** Traps in which something was found. */
  readonly trapped: number;
  readonly traps: number;
  readonly told: readonly string[];
}

/** Reads each labelled passage as a lesson of its own and counts what is found in it rightly, wrongly and not at all. */
export async function judge(file: string, joint: Joint, marks: MarksOf, texts: EditionTexts): Promise<Judged> {
  const lines = readFileSync(join(import.meta.dirname, file), 'utf8')
    .trim()
    .split('\n');
  const find = staleFinder(joint, texts, ['2014']);
  let [right, found, wanted, trapped, traps] = [0, 0, 0, 0, 0];
  const told: string[] = [];
  for (const line of lines) {
    const { text, stale } = JSON.parse(line) as Labelled;
    const { passages } = await readDocument('lesson.md', new TextEncoder().encode(text));
    const carried = carryPassages(joint, marks, passages, { editions: ['2014'] });
    const here = find(
      passages,
      carried.map(c => c.citation),
    );
    const at = stale.map(s => ({ ...s, start: text.indexOf(s.says), end: text.indexOf(s.says) + s.says.length }));
    const matches = (f: StaleContent) =>
      at.filter(s => s.items.includes(f.of.number) && f.start < s.end && f.end > s.start);
    const hit = new Set(here.flatMap(matches));
    const wrong = here.filter(f => matches(f).length === 0);
    right += hit.size;
    wanted += stale.length;
    found += hit.size + wrong.length;
    if (stale.length === 0) {
      traps++;
      if (wrong.length > 0) trapped++;
    }
    for (const s of at) if (!hit.has(s)) told.push(`missed ${s.items.join('/')} "${s.says}" in: ${text}`);
    for (const f of wrong) told.push(`false ${f.of.number} ${f.kind} "${text.slice(f.start, f.end)}" in: ${text}`);
  }
  return { right, found, wanted, trapped, traps, told };
}
