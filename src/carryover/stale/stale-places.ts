import type { Joint } from '../../crosswalk/joint.ts';
import type { Passage, Remark } from '../../model/document.ts';
import { typeName } from '../../model/settings.ts';
import { escapeMarkdown, upper } from '../documents/to-look-at.ts';
import { called, listed, withdrawalsWhy } from '../sentences.ts';
import type { EditionTexts } from './old-sayings.ts';
import type { StaleContent, StaleFinder } from './stale-content.ts';
import { wholeSentence } from './stale-history.ts';
import { type TypeValue, typesIn } from './type-values.ts';

/** A stretch of a document that tells what is no longer asked, with the new text beside. */
export interface StaleEntry {
  readonly file: string;
  readonly line: number;
  /** Where it stands, in words: "line 12", "table 2, row 3", "slide 4, notes", "page 7". */
  readonly place: string;
  readonly kind: StaleContent['kind'];
  /** The old requirement that it tells. */
  readonly number: string;
  readonly title: string;
  /** The stretch itself, and the text around it. */
  readonly says: string;
  readonly text: string;
  readonly was: string;
  /** The values that the newer edition states in its place by installation type, where it does. */
  readonly values?: readonly { readonly types: readonly string[]; readonly to: string }[];
  readonly now: readonly { readonly number: string; readonly title: string; readonly text: string }[];
  readonly why: string;
  readonly toDo: string;
}

const AROUND = 80;

/** Looks for stale content in a file of this name, and tells of it as the review list and the document do. */
export type StaleSearch = (
  file: string,
  ...document: Parameters<StaleFinder>
) => { readonly entries: readonly StaleEntry[]; readonly remarks: readonly Remark[] };

export function staleSearch(joint: Joint, texts: EditionTexts, find: StaleFinder): StaleSearch {
  return (file, passages, citations) => {
    const stale = find(passages, citations);
    const entries = staleEntries(joint, texts, file, stale);
    return { entries, remarks: staleRemarks(entries, stale) };
  };
}

function staleEntries(
  joint: Joint,
  texts: EditionTexts,
  file: string,
  stale: readonly StaleContent[],
): readonly StaleEntry[] {
  return stale.map(one => {
    const { passage, start, end, of, heirs, kind } = one;
    const line = passage.line + (passage.text.slice(0, start - passage.start).match(/\r\n|\n|\r/g)?.length ?? 0);
    return {
      file,
      line,
      place: passage.place ?? `line ${line}`,
      kind,
      number: of.number,
      title: of.title,
      says: shown(passage, start, end),
      text: shown(passage, start - AROUND, end + AROUND),
      was: texts.from(of.id) ?? '',
      ...(one.valuesNow ? { values: one.valuesNow.map(v => ({ types: typeNamesOf(joint, v), to: v.to })) } : {}),
      now: heirs.map(h => ({ number: h.number, title: h.title, text: texts.to(h.id) ?? '' })),
      why: whyOf(joint, one, shown(passage, start, end)),
      toDo: toDoOf(joint, one),
    };
  });
}

function staleRemarks(entries: readonly StaleEntry[], stale: readonly StaleContent[]): readonly Remark[] {
  return entries.map(({ why, toDo, now }, at) => ({
    start: stale[at]!.start,
    end: stale[at]!.end,
    paragraphs: [`Out of date: ${why}`, `To do: ${toDo}`, ...now.map(n => `Now ${nowLine(n)}`)],
  }));
}

/** A part of the review list, to stand below the citations. */
export function writeStale(to: string, entries: readonly StaleEntry[]): string {
  const lines = ['', '# Stale content', ''];
  lines.push(
    entries.length === 0
      ? 'Nothing was found.'
      : `${entries.length} ${entries.length === 1 ? 'stretch tells' : 'stretches tell'} what ${to} no longer asks. Perhaps there are more: only what is quoted, or told in much the same words, is found.`,
    '',
  );
  let file: string | undefined;
  for (const e of entries) {
    if (e.file !== file) lines.push(...(file === undefined ? [] : ['']), `## ${escapeMarkdown(e.file)}`, '');
    file = e.file;
    lines.push(`- ${escapeMarkdown(upper(e.place))}, **${escapeMarkdown(e.says)}**: ${escapeMarkdown(e.why)}`);
    lines.push(`  - To do: ${escapeMarkdown(e.toDo)}`);
    lines.push(`  - Text: ${escapeMarkdown(e.text)}`);
    lines.push(`  - Was ${escapeMarkdown(nowLine({ number: e.number, title: e.title, text: e.was }))}`);
    for (const now of e.now) lines.push(`  - Now ${escapeMarkdown(nowLine(now))}`);
  }
  return `${lines.join('\n').trimEnd()}\n`;
}

function nowLine({ number, title, text }: StaleEntry['now'][number]): string {
  return `${[number, title].filter(Boolean).join(' ')}: ${text}`;
}

function whyOf(joint: Joint, stale: StaleContent, says: string): string {
  const { kind, of, valueNow, valuesNow, onlyWords, heirs } = stale;
  const [from, to] = [joint.from.header.name, joint.to.header.name];
  const source = `${called(of)} of ${from}`;
  const tells = kind === 'quote' ? `Word for word ${source}` : `It tells ${source}`;
  if (heirs.length === 0) {
    const ends = joint.leaving(of.id).filter(l => l.to === null);
    return `${tells}. ${withdrawalsWhy(joint, of.number || of.title, ends)}`.trim();
  }
  if (valuesNow) {
    const head = kind === 'quote' ? tells : `"${says}" is a value of ${source}`;
    return `${head}; ${to} states values by installation type in its place: ${toldByType(joint, valuesNow)}.`;
  }
  if (valueNow !== undefined) {
    return kind === 'quote'
      ? `${tells}; ${to} states "${valueNow}" in place of its value.`
      : `"${says}" is a value of ${source}; ${to} states "${valueNow}" in its place.`;
  }
  if (onlyWords) return `${tells}; ${to} asks the same in other words.`;
  return kind === 'quote'
    ? `${tells}; ${to} words it otherwise, and part of it is not said any more.`
    : `"${says}" is a value of ${source}; nothing that follows it in ${to} states this value.`;
}

/** "450 mm for House lot and at least 500 mm for Terrace row and Courtyard block". */
function toldByType(joint: Joint, values: readonly TypeValue[]): string {
  return values.map(v => `"${v.to}" for ${listed(typeNamesOf(joint, v))}`).join('; ');
}

function typeNamesOf({ to }: Joint, { types }: TypeValue): readonly string[] {
  return types.map(t => typeName(to.settings, t));
}

/** What stands in the place of a value for the one installation type that the sentence around it names. */
function valueHere({ from, to }: Joint, { passage, start, end, valuesNow = [] }: StaleContent) {
  const sentence = wholeSentence(passage.text, start - passage.start, end - passage.start);
  const names = [...to.settings.installationTypes, ...from.settings.installationTypes];
  const [type, ...more] = typesIn(sentence, names);
  const here = type === undefined || more.length > 0 ? undefined : valuesNow.find(v => v.types.includes(type));
  return here && { to: here.to, name: typeName(to.settings, type!) };
}

function toDoOf(joint: Joint, stale: StaleContent): string {
  const { kind, heirs, valueNow, valuesNow, onlyWords } = stale;
  if (heirs.length === 0) return 'Take it out, or say that it is not asked any more.';
  if (onlyWords) return 'Quote the new text, or leave out the quotation marks.';
  if (kind === 'quote') return 'Quote the new text, or tell what it asks.';
  if (valuesNow) {
    const here = valueHere(joint, stale);
    if (!here) return 'Read the new text; if it is about the same thing, write the value of the type that is meant.';
    return `Read the new text; if it is about the same thing, write "${here.to}", the value for ${here.name}.`;
  }
  return valueNow === undefined
    ? 'Read the new text and tell what it asks.'
    : `Read the new text; if it is about the same thing, write "${valueNow}".`;
}

function shown({ text, start: at }: Passage, start: number, end: number): string {
  const [from, to] = [Math.max(0, start - at), Math.min(text.length, end - at)];
  const stretch = text
    .slice(from, to)
    .replace(/\u00ad/g, '')
    .replace(/\ufffc+/g, '…');
  return stretch.replace(/\s+/g, ' ').trim();
}
