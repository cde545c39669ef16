export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** A full stop behind these ends no sentence. */
const SHORT = new Set(
  'e.g i.e approx no nos fig figs min max in ft dia incl cl para paras mr mrs dr st vs cf ref sec art eq app vol ca resp'.split(
    ' ',
  ),
);

/** Sentences of a text: up to a full stop, question or exclamation mark before a new beginning, or up to a line end. */
export function sentencesOf(plain: string): Stretch[] {
  const found: Stretch[] = [];
  let start = 0;
  const close = (end: number) => {
    const from =
      start +
      (/^\s*(?:[-*\u2022]\s+|\(?[a-z0-9]{1,3}[.)]\s+)?/i.exec(plain.slice(start, Math.min(end, start + 64)))?.[0]
        .length ?? 0);
    let to = end;
    while (to > from && /\s/.test(plain[to - 1]!)) to--;
    if (to > from) found.push({ start: from, end: to });
    start = end;
  };
  for (const match of plain.matchAll(/[.!?][)"']?(?=\s|$)|\n/g)) {
    const end = match.index + match[0].length;
    if (match[0] === '\n' || (endsHere(plain, match.index) && beginsAnew(plain, end))) close(end);
  }
  close(plain.length);
  return found;
}

function endsHere(plain: string, stop: number): boolean {
  if (plain[stop] !== '.') return true;
  const before = /[\p{L}.]{1,12}$/u.exec(plain.slice(Math.max(0, stop - 12), stop))?.[0].toLowerCase();
  return before === undefined || !SHORT.has(before);
}

function beginsAnew(plain: string, at: number): boolean {
  return /^\s*(?:$|["'([]?[\p{Lu}\p{N}]|[-*\u2022])/u.test(plain.slice(at, at + 16)) || at >= plain.length - 1;
}

/** Parts of a sentence that are clauses of their own: between semicolons and colons. */
export function segmentsOf(plain: string, { start, end }: Stretch): Stretch[] {
  const parts: Stretch[] = [];
  let from = start;
  for (const match of plain.slice(start, end).matchAll(/[;:](?=\s)/g)) {
    parts.push({ start: from, end: start + match.index });
    from = start + match.index + 1;
  }
  parts.push({ start: from, end });
  return parts
    .map(p => ({ start: p.start + plain.slice(p.start, p.end).search(/\S|$/), end: p.end }))
    .filter(p => p.end > p.start);
}
