import { carryDocument, documentOutputs, outcomesOf, rewrittenIn } from '../commands/documents/carry-document.ts';
import type { PackedWays, Way } from '../crosswalk/packed-ways.ts';
import { kindOfDocument } from '../documents/kinds.ts';
import { OUTCOMES, type OutcomeKind } from '../model/citation.ts';
import { CatalogError } from '../model/errors.ts';
import { capital, counted, inWords } from '../model/said-words.ts';
import { besideName, carriedName } from './carried-name.ts';
import type { CarriedLesson, CarryRequest, MadeFile } from './carry-request.ts';
import { packedStaleSearch } from './stale-search.ts';

const KINDS: Readonly<Record<string, string>> = {
  markdown: 'a text in Markdown',
  plain: 'a plain text',
  html: 'a page in HTML',
  docx: 'a Word document',
  pptx: 'a PowerPoint presentation',
};

const MEANINGS: Readonly<Record<OutcomeKind, string>> = {
  kept: 'The number stays and asks the same.',
  carried: 'The new number is written in its place.',
  choose: 'A person has to decide; it is left as it is.',
  withdrawn: 'No requirement takes its place; it is left as it is.',
  unknown: 'The number names nothing, or not one thing; it is left as it is.',
};

/** Carries a lesson or any other text, with the same bytes as `carry docs`. @throws CatalogError */
export async function carryLesson(way: Way, packed: PackedWays, { file }: CarryRequest): Promise<CarriedLesson> {
  const { joint, marks } = way;
  const { name, bytes } = file;
  const kind = kindOfDocument(name);
  if (kind === 'pdf') {
    throw new CatalogError(
      'BadArgument',
      `${name} is a PDF, which can only be read; choose the document that it was made from, as .docx, .pptx, .html or .md.`,
    );
  }
  const to = joint.to.header.name;
  const done = await carryDocument(
    joint,
    marks,
    { path: name, name, bytes },
    {
      editions: packed.editions,
      searchStale: packedStaleSearch(way, packed),
    },
  );
  const { files, review, stale } = documentOutputs(joint, [done]);
  const outcomes = outcomesOf(done.citations);
  const all = done.citations.length;
  const cited = new Map<string, number>();
  for (const { citation } of done.citations) cited.set(citation.edition, (cited.get(citation.edition) ?? 0) + 1);
  const editionsCited = inWords([...cited].map(([edition, n]) => `${edition} (${counted(n, 'time')})`));
  const rewritten = rewrittenIn(done);
  const left = [
    ...(review.length > 0 ? [`${counted(review.length, 'citation is', 'citations are')} for a person to look at`] : []),
    ...(stale.length > 0
      ? [`${counted(stale.length, 'stretch tells', 'stretches tell')} what ${to} no longer asks`]
      : []),
  ];
  const rest = left.length === 0 ? 'Nothing is left for a person to look at.' : `${capital(inWords(left))}.`;
  const said =
    done.record !== undefined
      ? `It says that it is a signed or dated record (${done.record}), so it stays as it is.`
      : `${counted(rewritten, 'number is', 'numbers are')} written anew for ${to}. ${rest}`;
  return {
    kind: 'lesson',
    found: `${name} is ${KINDS[kind]}; ${all === 0 ? 'no number of the catalog was found in it' : `it cites numbers ${counted(all, 'time')}, of edition ${editionsCited}`}.`,
    said,
    outcomes: OUTCOMES.map(k => ({ kind: k, count: outcomes[k], meaning: MEANINGS[k] })),
    notes: [],
    review: review.map(r => ({
      place: r.place,
      number: r.number,
      outcome: r.outcome,
      why: r.why,
      toDo: r.toDo,
      text: r.text,
      heirs: r.heirs.map(h => `${h.number} ${h.title}`.trim()),
    })),
    stale: stale.map(e => ({
      place: e.place,
      number: e.number,
      says: e.says,
      was: e.was,
      now: e.now.map(n => `${n.number} ${n.title}: ${n.text}`),
      why: e.why,
      toDo: e.toDo,
    })),
    files: files.map(([path, content]): MadeFile => {
      const encoded = typeof content === 'string' ? new TextEncoder().encode(content) : content;
      const what = WHATS[path] ?? (path === name ? 'carried' : 'mark');
      // Names of their own: in a folder of downloads all of them may come to lie beside the original.
      const made = path.startsWith(name) ? carriedName(name, to) + path.slice(name.length) : besideName(name, to, path);
      return { name: made, what, bytes: encoded };
    }),
  };
}

const WHATS: Readonly<Record<string, MadeFile['what']>> = { 'review.md': 'review', 'review.json': 'review-data' };
