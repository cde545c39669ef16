import { kindOfDocument } from '../documents/kinds.ts';
import { capital, counted, inWords } from '../model/said-words.ts';

const KINDS: Readonly<Record<string, string>> = {
  markdown: 'a text in Markdown',
  plain: 'a plain text',
  html: 'a page in HTML',
  docx: 'a Word document',
  pptx: 'a PowerPoint presentation',
};

/** What was found in lessons, in a sentence. @param cited how often which edition is cited */
export function foundInLessons(names: readonly string[], cited: ReadonlyMap<string, number>): string {
  const all = [...cited.values()].reduce((sum, n) => sum + n, 0);
  const [only, ...more] = names;
  const what =
    more.length > 0 ? `These are ${counted(names.length, 'lesson')}` : `${only} is ${KINDS[kindOfDocument(only!)]}`;
  const they = more.length > 0 ? 'they cite' : 'it cites';
  if (all === 0) return `${what}; no number of the catalog was found in ${more.length > 0 ? 'them' : 'it'}.`;
  const editions = [...cited].map(([edition, n]) => (cited.size > 1 ? `${edition} (${counted(n, 'time')})` : edition));
  return `${what}; ${they} numbers ${counted(all, 'time')}, of edition ${inWords(editions)}.`;
}

/** What becomes of them, in a sentence or two. */
export function saidOfLessons({
  to,
  cited,
  rewritten,
  open,
  stale,
  records,
  files,
}: {
  readonly to: string;
  /** How many citations were found at all. */
  readonly cited: number;
  readonly rewritten: number;
  readonly open: number;
  readonly stale: number;
  /** The lines by which some of them say that they are signed or dated records. */
  readonly records: readonly { readonly name: string; readonly line: string }[];
  readonly files: number;
}): string {
  const signed = records.map(({ name, line }) =>
    files === 1
      ? `It says that it is a signed or dated record (${line}), so it stays as it is.`
      : `${name} says that it is a signed or dated record (${line}), so it stays as it is.`,
  );
  if (records.length === files) return signed.join(' ');
  if (cited === 0 && stale === 0) {
    return 'There is nothing to carry. If there should be, look whether it is the right file, and whether the edition above is the one that it cites.';
  }
  const left = [
    ...(open > 0 ? [`${counted(open, 'citation is', 'citations are')} for a person to look at`] : []),
    ...(stale > 0 ? [`${counted(stale, 'stretch tells', 'stretches tell')} what ${to} no longer asks`] : []),
  ];
  const rest = left.length === 0 ? 'Nothing is left for a person to look at.' : `${capital(inWords(left))}.`;
  return [`${counted(rewritten, 'number is', 'numbers are')} written anew for ${to}.`, rest, ...signed].join(' ');
}
