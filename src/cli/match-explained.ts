import type { MatchReport } from '../commands/matching/match-tables.ts';

/** Reasons whose names do not say what they are. */
const REASON_MEANS: Readonly<Record<string, string>> = {
  'one-to-one': 'what it adds to the best choice of one heir for each row',
  rivals: 'how strong other candidates of its two rows are',
  folding: 'the row above, or those beside, go to the same row',
  gain: 'what it adds to a merge or a split',
  containment: 'how much of one text stands in the other',
};

/** What the links of old rows are made of, with the runners-up. */
export function explainedLines(report: MatchReport, rows: readonly number[], most: number): string[] {
  const reasons = new Set<string>();
  const lines = rows.flatMap(i => explained(report, i, most, reasons));
  const means = Object.entries(REASON_MEANS).filter(([reason]) => reasons.has(reason));
  if (means.length === 0) return lines;
  return [...lines, `${means.map(([reason, what]) => `${reason}: ${what}`).join('; ')}.`];
}

function explained({ matching, from, to }: MatchReport, i: number, most: number, reasons: Set<string>): string[] {
  const row = from.rows[i]!;
  const table = from.tables.length > 1 ? ` (${from.tables[row.table]})` : '';
  const lines = [`${`${row.number} ${row.title || row.text.slice(0, 70)}`.trim()}${table}`];
  const candidates = matching.runnersUp(i, most);
  if (candidates.length === 0) return [...lines, '  nothing in the new table shares a word or a place with it'];
  for (const c of candidates) {
    const heir = to.rows[c.to]!;
    const linked = matching.links.some(l => l.from === i && l.to === c.to);
    const sum = c.base + c.parts.reduce((total, p) => total + p.value, 0);
    for (const { reason, value } of c.parts) if (Math.abs(value) >= 0.1) reasons.add(reason);
    lines.push(
      `  ${linked ? '→' : ' '} ${`${(c.confidence * 100).toFixed(1)} %`.padStart(7)}  ${heir.number} ${heir.title || heir.text.slice(0, 60)}`,
      `      ${[...c.parts.map(p => `${p.reason} ${signed(p.value)}`), `start ${signed(c.base)}`].join(', ')} = ${signed(sum)} (log-odds)${c.silent ? '; no word speaks for it, so at most 90 % is shown' : ''}`,
    );
  }
  return lines;
}

const signed = (value: number) => `${value < 0 ? '−' : '+'}${Math.abs(value).toFixed(2)}`;
