import { type CirculationPack, MARK_MEANINGS } from '../../release/circulation-pack.ts';
import { FORM_HEADERS } from '../../release/comments-columns.ts';
import { writeXlsx } from '../../tables/write-xlsx.ts';

const [WHO, LINE, CLAUSE, , TYPE, COMMENTS, PROPOSED, OBSERVATIONS] = FORM_HEADERS;
/** What a reviewer fills in, on whichever sheet; each sheet can be read as a form. */
const FILLED_IN = [WHO, TYPE, COMMENTS, PROPOSED, OBSERVATIONS];
const MARK = 'Mark (see sheet Marks)';
const BLANK = [14, 12, 40, 40, 30];

/** The pack as a workbook: a form, the draft beside the old texts, what is withdrawn, and every link. */
export function packXlsx(pack: CirculationPack): Uint8Array {
  return writeXlsx([
    { name: 'Comments', header: FORM_HEADERS, rows: [], widths: [10, 10, 18, 20, 12, 50, 50, 30] },
    {
      name: pack.published ? 'Edition' : 'Draft',
      header: [LINE, CLAUSE, MARK, 'Title', `Text of ${pack.draft}`, `Text of ${pack.replaces}`, 'Why', ...FILLED_IN],
      widths: [10, 12, 8, 24, 50, 50, 36, ...BLANK],
      rows: pack.items.map(({ entry, mark, lines, old, why }) => [
        range(lines),
        entry.number,
        mark,
        entry.title,
        lines
          .slice(1)
          .map(l => `${l.line}  ${l.text}`)
          .join('\n'),
        old.map(o => `${o.clause} ${o.title}${o.text === '' ? ': the same words.' : `: ${o.text}`}`).join('\n'),
        why.join(' '),
      ]),
    },
    {
      name: 'Withdrawn',
      header: [
        CLAUSE,
        MARK,
        'Title',
        'What it says',
        'Why it goes',
        'What governs then',
        'Where to look',
        ...FILLED_IN,
      ],
      widths: [14, 8, 24, 50, 40, 24, 24, ...BLANK],
      rows: pack.withdrawn.map(w => [w.clause, w.mark, w.title, w.text, w.why.join(' '), w.governs, w.see]),
    },
    {
      name: 'Links',
      header: [CLAUSE, 'Title before', `Title in ${pack.draft}`, 'What becomes of it', 'Why', ...FILLED_IN],
      widths: [24, 28, 28, 14, 36, ...BLANK],
      rows: pack.links.map(l => [l.clause, l.oldTitle, l.newTitle, l.fate, l.why.join(' ')]),
    },
    {
      name: 'Marks',
      header: ['Mark', 'What it means'],
      rows: Object.entries(MARK_MEANINGS).map(([mark, meaning]) => [mark, meaning]),
    },
  ]);
}

function range(lines: CirculationPack['items'][number]['lines']): string {
  const [first, last] = [lines[0]!.line, lines.at(-1)!.line];
  return first === last ? String(first) : `${first}-${last}`;
}
