import type { Remark } from '../../model/document.ts';
import { listed } from '../sentences.ts';
import { citedNumber } from './carry-citation.ts';
import type { CarriedCitation } from './passages.ts';
import { citedIn, escapeMarkdown, type LookAtEntry, upper } from './to-look-at.ts';

/** One citation that was settled by what a person decided for its case. */
export interface DecidedEntry extends Omit<LookAtEntry, 'cause' | 'toDo'> {
  /** What was asked. */
  readonly asked: string;
}

/** What a decision settled in one file: rewritten by it, or left under the old edition. */
export function decidedIn(file: string, citations: readonly CarriedCitation[]): readonly DecidedEntry[] {
  return settledOf(citations).map(one => ({ ...citedIn(file, one), asked: one.undecided?.why ?? '' }));
}

function settledOf(citations: readonly CarriedCitation[]): readonly CarriedCitation[] {
  return citations.filter(
    ({ outcome: { kind, cause }, byHand }) => cause === 'decided' && !byHand && (kind === 'carried' || kind === 'kept'),
  );
}

/** The evidence, to stand in the document at a number that is rewritten because somebody said so. */
export function decidedRemarks(citations: readonly CarriedCitation[]): readonly Remark[] {
  return settledOf(citations).map(remarkOf);
}

function remarkOf({ citation, outcome, undecided }: CarriedCitation): Remark {
  const number = citedNumber(citation);
  const numbers = listed([...new Set(outcome.heirs.map(h => h.number))]);
  const done =
    outcome.kind === 'kept' ? `${number} stays, of edition ${citation.edition}` : `${number} is now ${numbers}`;
  return {
    start: citation.start,
    end: (citation.through ?? citation).end,
    paragraphs: [`${done}. ${outcome.why}`, `Asked was: ${undecided?.why ?? ''}`],
  };
}

/** A part of the review list, to stand below what is to be looked at; nothing where nobody decided anything. */
export function writeDecided(entries: readonly DecidedEntry[]): string {
  if (entries.length === 0) return '';
  const lines = ['', '# Decided', '', `${entries.length} ${entries.length === 1 ? 'citation' : 'citations'}.`, ''];
  let file: string | undefined;
  for (const e of entries) {
    if (e.file !== file) lines.push(...(file === undefined ? [] : ['']), `## ${escapeMarkdown(e.file)}`, '');
    file = e.file;
    const now =
      e.outcome === 'kept' ? `stays, of edition ${e.edition}` : `is now ${listed(e.heirs.map(h => h.number))}`;
    lines.push(
      `- ${escapeMarkdown(upper(e.place))}, **${escapeMarkdown(e.number)}** ${escapeMarkdown(`${now}. ${e.why}`)}`,
    );
    lines.push(`  - Asked was: ${escapeMarkdown(e.asked)}`);
    lines.push(`  - Text: ${escapeMarkdown(e.text)}`);
  }
  return `${lines.join('\n').trimEnd()}\n`;
}
