import { DISPOSITIONS } from '../../model/comment.ts';
import { counted } from '../../model/said-words.ts';
import { excerpt, TOLD } from '../../release/comments.ts';
import { type CommentNow, toldNow } from '../../release/comments-now.ts';
import type { ListedComments } from './comments-list.ts';

/** The comments as lines for a terminal, columns aligned, and what they come to. */
export function tellComments({ comments, records, edition, open }: ListedComments): string[] {
  const rows = comments.map(listed => [
    listed.record.code,
    listed.record.type ?? '?',
    placeOf(listed),
    listed.record.answer ? TOLD[listed.record.answer.disposition] : 'open',
    `"${excerpt(listed.record)}"`,
  ]);
  const widths = [0, 1, 2, 3].map(at => Math.min(36, Math.max(0, ...rows.map(r => r[at]!.length))));
  const lines = rows.map(row =>
    row
      .map((text, at) => text.padEnd(widths[at] ?? 0))
      .join('  ')
      .trimEnd(),
  );
  const people = new Set(records.map(r => r.by)).size;
  const byAnswer = DISPOSITIONS.flatMap(d => {
    const n = records.filter(r => r.answer?.disposition === d).length;
    return n > 0 ? [`${TOLD[d].toLowerCase()} ${n}`] : [];
  });
  const untyped = comments.filter(c => c.record.type === undefined).length;
  const unanswered = records.filter(r => !r.answer).length;
  const waiting = (rule: string) => open.filter(f => f.rule === rule).length;
  const [unlinked, same] = [waiting('comment-without-change'), waiting('comment-unchanged')];
  const totals = [`open ${unanswered}`, ...byAnswer].join(', ');
  const shown = comments.length < records.length ? ` (${comments.length} shown)` : '';
  return [
    ...lines,
    `${counted(records.length, 'comment', 'comments')} on ${edition} by ${people}${shown}: ${totals}.`,
    ...(untyped > 0 ? [`?: ${counted(untyped, 'comment gives', 'comments give')} no type (ge, te or ed).`] : []),
    ...(same > 0 ? [`${same} accepted, and the item that is to answer them says what was circulated.`] : []),
    ...(unlinked > 0
      ? [`${unlinked} accepted, and no change answers them yet: comments answer CODE --change NUMBER`]
      : []),
  ];
}

/** `1.1.1.5 → 1.1.1.6`: as it was cited, and as it is printed today where that differs. */
function placeOf(listed: CommentNow): string {
  const said = listed.record.clause ?? (listed.record.line ? `line ${listed.record.line}` : 'whole');
  const now = toldNow(listed);
  return now === '' || now === said ? said : `${said} → ${now}`;
}
