import type { Entry } from '../model/edition.ts';
import { counted } from '../model/said-words.ts';
import { bundleFrame } from './bundle-frame.ts';
import type { DispositionLine } from './disposition.ts';
import type { DispositionTable } from './disposition-tables.ts';
import { fileOf, fillTemplate, type Templates } from './fill-template.ts';
import type { Publication } from './publication.ts';
import { siteNames } from './site-names.ts';

/** A disposition or derivation table as one page to print, part by part. */
export function dispositionPage(publication: Publication, templates: Templates, table: DispositionTable): string {
  const { joint } = publication;
  const forwards = table.kind === 'disposition';
  const [here, there] = forwards ? [table.from, table.to] : [table.to, table.from];
  const places = forwards ? joint.old : joint.new;
  return fillTemplate(templates, 'table', {
    site: bundleFrame(publication, siteNames(publication), []),
    title: forwards ? `What became of each item of ${here}` : `Where each item of ${here} comes from`,
    lead: `${forwards ? 'Disposition' : 'Derivation'} table, ${counted(table.lines.length, 'line')}. ${publication.findings.length > 0 ? `Not settled: ${publication.findings.map(f => f.message).join(' ')}` : ''}`.trim(),
    css: fileOf(templates, 'table.css'),
    here,
    there,
    between: forwards ? 'became' : 'comes from',
    parts: byPart(table.lines, id => places.part(id)!),
  });
}

/** Marks of which a reader has to know what they rest on. */
const MINDED: ReadonlySet<string> = new Set(['stricter', 'relaxed', 'mixed', 'read both', 'narrower', 'shifted']);

function byPart(lines: readonly DispositionLine[], partOf: (id: string) => Entry) {
  const parts: { number: string; title: string; part: Entry; lines: object[] }[] = [];
  let before = '';
  for (const line of lines) {
    const part = partOf(line.here.id);
    if (parts.at(-1)?.part !== part) parts.push({ number: part.number, title: part.title, part, lines: [] });
    const duty = line.marks.some(m => MINDED.has(m)) ? line.mind : '';
    const governs = line.governs && `Now governed by ${line.governs}.`;
    const said = [duty, line.reason && `Reason: ${line.reason}.`, governs, line.note].filter(Boolean).join(' ');
    parts.at(-1)!.lines.push({ ...line, first: line.here.id !== before, said });
    before = line.here.id;
  }
  return parts;
}
