import type { Language } from './language.ts';
import { clusterNearDuplicates, tellDifferences } from './near-duplicates.ts';
import type { DraftContext, Remark } from './rule.ts';
import { remarksOn } from './rules.ts';

/** A text to be judged, with what is known of it. */
export interface DraftText {
  readonly id: string;
  /** What people call it, such as its number; absent: its id. */
  readonly called?: string;
  readonly text: string;
  readonly context?: DraftContext;
}

/** A remark on the text `id`. */
export interface DraftRemark extends Remark {
  readonly id: string;
}

/** Everything that the drafting rules say of these texts, text by text; near-duplicates among them as well. */
export function checkDrafts(texts: readonly DraftText[], language: Language): DraftRemark[] {
  const alike = nearDuplicateRemarks(texts);
  return texts.flatMap((draft, at) => [
    ...remarksOn(language.read(draft.text), draft.context).map(remark => ({ id: draft.id, ...remark })),
    ...(alike.get(at) ?? []),
  ]);
}

/** By position, since a table of texts may use an id twice. */
function nearDuplicateRemarks(texts: readonly DraftText[]): Map<number, DraftRemark[]> {
  const remarks = new Map<number, DraftRemark[]>();
  const say = (at: number, message: string) => {
    const { id, text } = texts[at]!;
    remarks.set(at, [{ id, rule: 'near-duplicate', start: 0, end: text.length, words: text, message }]);
  };
  const called = (name: string) => texts[Number(name)]!.called || texts[Number(name)]!.id;
  for (const { first, others } of clusterNearDuplicates(texts.map(({ text }, at) => ({ id: String(at), text })))) {
    const names = others.map(o => called(o.id));
    const listed = names.length > 5 ? `${names.slice(0, 5).join(', ')} and ${names.length - 5} more` : names.join(', ');
    say(Number(first.id), `Says nearly the same as ${listed}; one requirement may serve them all.`);
    for (const other of others) {
      say(Number(other.id), `Says nearly the same as ${called(first.id)}: ${tellDifferences(other)}.`);
    }
  }
  return remarks;
}
