import { type CitedBook, citedBook } from '../../citing/cited-book.ts';
import { findCitations } from '../../citing/find-citations.ts';
import { checkLineage } from '../../crosswalk/check-lineage.ts';
import type { Edition, EditionHeader } from '../../model/edition.ts';
import type { Finding } from '../../model/finding.ts';
import type { ItemId } from '../../model/item.ts';
import { openComments } from '../../release/comments.ts';
import { openFixedQuestions } from '../../release/fixed-question-lines.ts';
import { type GateReport, gateOf, stopping } from '../../release/gate.ts';
import { returnedIds, withdrawalFindings } from '../../release/gate-lineage.ts';
import { numberFindings } from '../../release/gate-numbers.ts';
import { type OwnReference, referenceFindings } from '../../release/gate-references.ts';
import { outOfOrder } from '../../release/schedule.ts';
import { holding, locate } from '../../store/names.ts';
import type { Catalog } from '../../store/open.ts';
import { indexOf, readDecisions, readEdition, readIndex, readLineage } from '../../store/read.ts';
import { readComments } from '../comments/comments-store.ts';
import type { Ports } from '../ports/ports.ts';
import { checkCatalog } from '../reading/check-catalog.ts';
import { allHeaders, readStep } from '../reading/read-crosswalk.ts';
import { askFixedQuestions } from './ask-fixed-questions.ts';

export interface ReleaseReport extends GateReport {
  readonly edition: string;
  readonly replaces: string | null;
}

/** Asks everything that has to be true of a draft before it is published; of an edition, whether it was. */
export async function releaseGate(ports: Ports, catalog: Catalog, name: string): Promise<ReleaseReport> {
  const at = await locate(catalog, name);
  return gateAt(ports, holding(catalog, at), at.name);
}

/** @param catalog holds the draft at the commit that is asked about */
async function gateAt(ports: Ports, catalog: Catalog, name: string): Promise<ReleaseReport> {
  const edition = await readEdition(catalog, name);
  const { replaces } = edition.header;
  const older = replaces === null ? undefined : await readEdition(catalog, replaces);
  const step = older ? await stepFindings(ports, catalog, name, edition, older) : NOTHING;
  ports.progress(`Reading the texts of ${name} as a reviewer would`);
  const { lines, findings: unread } = await askFixedQuestions(ports, catalog, { edition: name });
  const files = (await checkCatalog(catalog, name)).findings;
  const told = new Set([...step.conservation, ...step.lineage].map(f => f.message));
  return {
    edition: name,
    replaces,
    ...gateOf({
      ...step,
      ids: older ? await idFindings(catalog, edition, older) : [],
      references: await ownReferences(catalog, edition, older, name),
      numbering: numberFindings(edition.settings, edition.items),
      comments: stopping(openComments((await readComments(catalog, name)).records)),
      review: [...openFixedQuestions(lines, name), ...unread],
      dates: outOfOrder(name, edition.header.dates),
      files: files.filter(f => !told.has(f.message)),
    }),
  };
}

const NOTHING = { conservation: [], lineage: [], losses: [] };

async function stepFindings(ports: Ports, catalog: Catalog, name: string, edition: Edition, older: Edition) {
  const [lineage, decisions] = [await readLineage(catalog, name), await readDecisions(catalog, name)];
  const ids = (list: readonly { id: ItemId }[]) => new Set(list.map(i => i.id));
  ports.progress(`Asking whether ${edition.header.name} loses anything of ${older.header.name}`);
  const { auditEditions, openLosses } = await import('../audit/audit-editions.ts');
  const report = await auditEditions(catalog, older.header.name, name);
  // An item that nothing accounts for is among the losses as well; it is told once, under conservation.
  const losses = openLosses(report).filter(f => f.data?.kind !== 'type');
  return {
    conservation: report.findings,
    lineage: [
      ...checkLineage(lineage, ids(older.items), ids(edition.items), decisions),
      ...withdrawalFindings(lineage, edition.settings, older),
    ],
    losses: [...stopping(losses), ...unsigned(report.lines)],
  };
}

/** Settled by somebody who did not make the change, which is enough; that nobody signed it besides is told. */
function unsigned(
  lines: readonly {
    readonly key: string;
    readonly state: string;
    readonly answer?: { readonly second?: unknown; readonly by: string };
    readonly item: ItemId;
    readonly number: string;
    readonly text: string;
  }[],
): Finding[] {
  return lines
    .filter(l => l.state === 'settled' && l.answer && !l.answer.second)
    .map(l => ({
      rule: 'loss-unsigned',
      severity: 'warning',
      subject: l.item,
      message: `${l.number}: "${l.text}" was settled by ${l.answer!.by}, and no second person has signed it.`,
      data: { key: l.key },
    }));
}

async function idFindings(catalog: Catalog, edition: Edition, older: Edition): Promise<Finding[]> {
  const headers = new Map((await allHeaders(catalog)).map(h => [h.name, h]));
  const before = new Map<ItemId, { edition: string; title: string }>();
  const up = (h: EditionHeader | undefined) => (h?.replaces == null ? undefined : headers.get(h.replaces));
  const seen = new Set<string>();
  for (let at = up(older.header); at && !seen.has(at.name); at = up(at)) {
    seen.add(at.name);
    for (const { id, title } of (await readIndex(catalog, at.name)).entries) {
      if (!before.has(id)) before.set(id, { edition: at.name, title });
    }
  }
  return returnedIds(edition.items, new Set(older.items.map(i => i.id)), before);
}

function bookOf(edition: Edition): CitedBook {
  const texts = new Map(edition.items.map(i => [i.id, i.text]));
  return citedBook(indexOf(edition), { textOf: id => texts.get(id) });
}

async function ownReferences(
  catalog: Catalog,
  edition: Edition,
  older: Edition | undefined,
  name: string,
): Promise<Finding[]> {
  const book = bookOf(edition);
  const oldBook = older ? bookOf(older) : undefined;
  const references: OwnReference[] = [];
  const kept = new Set<ItemId>();
  const oldItems = new Map(older?.items.map(i => [i.id, i]));
  for (const item of edition.items) {
    if (!item.text) continue;
    const passage = { start: 0, end: item.text.length, text: item.text, line: 1 };
    if (oldItems.get(item.id)?.text === item.text) kept.add(item.id);
    // A text that stands as it stood prints the older edition's numbers, whichever the draft has.
    const [found] = findCitations(kept.has(item.id) && oldBook ? oldBook : book, [passage], { editions: [] });
    for (const { number, certain } of found!) references.push({ item: item.id, number, certain });
  }
  const step = older ? await readStep(catalog, older.header.name, name) : undefined;
  return referenceFindings({
    items: edition.items,
    references,
    unchanged: id => kept.has(id),
    ...(step
      ? {
          meant: number => {
            const [old] = step.old.withNumber(number);
            if (!old) return undefined;
            return { title: old.title, heirs: step.leaving(old.id).flatMap(l => l.to ?? []) };
          },
        }
      : {}),
  });
}
