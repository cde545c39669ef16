import type { Edit, Remark } from '../../model/document.ts';
import { counted } from '../../model/said-words.ts';
import type { Decision, Decisions } from '../decisions.ts';
import type { CaseKey, Question } from '../questions.ts';
import { type FoundMark, marksIn, type SearchedDocument } from './edition-marks.ts';
import { IN_TEXTS } from './text-decisions.ts';
import { escapeMarkdown, isOpen, upper } from './to-look-at.ts';

/** A place at which a document says that it follows the edition that it is carried from. */
export interface MarkEntry {
  readonly file: string;
  readonly line: number;
  readonly place: string;
  /** The text around the edition's name. */
  readonly text: string;
  readonly why: string;
  readonly toDo: string;
}

/** A document whose citations are answered. */
export interface MarkedDocument extends SearchedDocument {
  readonly name: string;
  /** How many stretches of it tell what is no longer asked. */
  readonly stale: number;
  readonly isFixed: (place: { readonly start: number; readonly end: number }) => boolean;
}

/** The marks of a document: those that stay are listed, those that a person decided on are edited. */
export interface CarriedMarks {
  /** How many places there are, whatever becomes of them. */
  readonly places: number;
  readonly entries: readonly MarkEntry[];
  readonly edits: readonly Edit[];
  readonly remarks: readonly Remark[];
}

/**
 * Headings, headers, footers, statements ("All numbers are those of the 2018 edition") and the file's own mark. Nothing of
 * it is rewritten for a number that is certain: which edition a text follows is true or false of all that it says. Once
 * somebody has decided it and no number is left to be looked at, the name is rewritten; before that it would be untrue.
 */
export function carryMarks(
  way: { readonly from: string; readonly to: string },
  document: MarkedDocument,
  decisions?: Decisions,
): CarriedMarks {
  const { from, to } = way;
  const found: readonly FoundMark[] = marksIn(document, from);
  const own = document.citations.filter(c => c.citation.edition === from);
  const stays = own.filter(c => c.outcome.cause === 'decided' && c.outcome.kind === 'kept').length;
  const open = own.filter(isOpen).length + document.stale;
  const done = own.filter(c => c.edits.length > 0).length;
  const answer = found.length > 0 ? answerFor(way, document.name, decisions) : undefined;
  const [entries, edits, remarks]: [MarkEntry[], Edit[], Remark[]] = [[], [], []];
  for (const { at, plain, ...mark } of found) {
    const rest =
      open === 0
        ? 'nothing is left to be looked at'
        : `${counted(open, 'place is', 'places are')} left to be looked at`;
    const told = [
      `${counted(done, 'number is', 'numbers are')} rewritten for ${to}`,
      ...(stays > 0 ? [`${counted(stays, 'stays', 'stay')} of ${from}`] : []),
    ];
    const why = `It says that the text follows ${from}; ${told.join(', ')}, and ${rest}.`;
    const entry = { file: document.name, ...mark, why };
    const free = plain && at !== undefined && !document.isFixed(at);
    if (answer?.answer === 'carry' && open + stays === 0 && free) {
      edits.push({ ...at, text: to });
      remarks.push({ ...at, paragraphs: [`${from} is now ${to}. ${decidedBy(answer)}`] });
    } else if (answer === undefined || answer.answer === 'carry') {
      const waits = open > 0 ? `Once nothing is left to be looked at, write ${to}` : `Write ${to}`;
      const toDo = `${waits}, or say which numbers are of which edition.${answer ? ` ${decidedBy(answer)}` : ''}`;
      entries.push({ ...entry, toDo });
      if (at) remarks.push({ ...at, paragraphs: [why, `To do: ${toDo}`] });
    }
  }
  return { places: found.length, entries, edits, remarks };
}

/** The question about all marks of all documents: no item is asked about, and the answer is the edition itself. */
export function markQuestion(
  { from, to }: { readonly from: string; readonly to: string },
  documents: readonly { readonly name: string; readonly places: number }[],
): readonly Question[] {
  const told = documents.filter(d => d.places > 0);
  const lines = told.reduce((n, d) => n + d.places, 0);
  if (lines === 0) return [];
  const why = `${lines} ${lines === 1 ? 'place says' : 'places say'} that the text follows ${from}: ${told
    .map(d => d.name)
    .slice(0, 5)
    .join('; ')}${told.length > 5 ? ' and more' : ''}.`;
  const toDo = `Say whether they are to name ${to} once nothing is left to be looked at.`;
  const heirs = [{ id: '', number: to, title: '' }];
  return [
    {
      ...caseOf(from, IN_TEXTS),
      outcome: { kind: 'choose', cause: 'reading', heirs, why, toDo },
      askedOn: `${from} to ${to}`,
      lines,
    },
  ];
}

function answerFor(
  way: { readonly from: string; readonly to: string },
  document: string,
  decisions: Decisions | undefined,
) {
  const [own, all] = [document, IN_TEXTS].map(state =>
    decisions?.answerTo(caseOf(way.from, state), `${way.from} to ${way.to}`),
  );
  return own ?? all;
}

function decidedBy({ by, because }: Decision): string {
  return `Decided by ${by}${because === '' ? '' : `: ${because}`}.`;
}

function caseOf(edition: string, state: string): CaseKey {
  return { number: `edition ${edition}`, type: undefined, state, edition, title: undefined };
}

/** A part of the review list, to stand below what is to be looked at; nothing where there is no mark. */
export function writeMarks(entries: readonly MarkEntry[]): string {
  if (entries.length === 0) return '';
  const lines = ['', '# Which edition the texts say that they follow', ''];
  for (const [at, e] of entries.entries()) {
    if (e.file !== entries[at - 1]?.file) lines.push(...(at === 0 ? [] : ['']), `## ${escapeMarkdown(e.file)}`, '');
    lines.push(`- ${escapeMarkdown(`${upper(e.place)}: ${e.why}`)}`);
    lines.push(`  - To do: ${escapeMarkdown(e.toDo)}`);
    lines.push(`  - Text: ${escapeMarkdown(e.text)}`);
  }
  return `${lines.join('\n').trimEnd()}\n`;
}
