import type { CommentAnswer, CommentRecord, Disposition } from '../model/comment.ts';
import type { Finding } from '../model/finding.ts';

/**
 * What a release has to wait for: comments that nobody has answered, comments whose clause nobody has placed, and
 * accepted ones that no change answers.
 */
export function openComments(records: readonly CommentRecord[]): Finding[] {
  return records.flatMap((record): Finding[] => {
    const { code, answer, unplaced, edition } = record;
    const say = (rule: string, told: string): Finding => ({
      rule,
      severity: 'warning',
      subject: code,
      message: `${code}${record.clause ? ` on ${record.clause}` : ''}: ${told}`,
      data: { edition, by: record.by, items: record.items.map(i => i.id) },
    });
    if (!answer) {
      const placed = unplaced ? ' Its clause was not found in the draft.' : '';
      return [say('comment-open', `"${excerpt(record)}" is not answered.${placed}`)];
    }
    return needsChange(answer) && !answer.change
      ? [say('comment-without-change', `it is ${TOLD[answer.disposition].toLowerCase()}, and no change answers it.`)]
      : [];
  });
}

/** Accepted, whole or in part: the draft has to change. */
export function needsChange({ disposition }: CommentAnswer): boolean {
  return disposition === 'accepted' || disposition === 'accepted-in-part';
}

/** What a disposition is called in a form. */
export const TOLD: Readonly<Record<Disposition, string>> = {
  accepted: 'Accepted',
  'accepted-in-part': 'Accepted in part',
  'not-accepted': 'Not accepted',
  noted: 'Noted',
};

/** An answer as it is written under the observations: `[UVA-002] Not accepted. Compaction was found below 150 mm.` */
export function observationOf({ code, answer }: Pick<CommentRecord, 'code' | 'answer'>): string {
  if (!answer) return `[${code}]`;
  const because = answer.because.trim();
  return `[${code}] ${TOLD[answer.disposition]}.${because === '' ? '' : ` ${because}`}`;
}

/** Whether an observation was written by `observationOf`, whatever the answer was at that time. */
export function isOurs(observation: string, code: string): boolean {
  return observation.trimStart().startsWith(`[${code}]`);
}

/**
 * The answer that an observation begins with, word for word as a committee says it (`Accepted in part; …`); undefined
 * for anything else. "Accepted in principle" is none of the four.
 */
export function dispositionIn(
  observation: string,
): { readonly disposition: Disposition; readonly because: string } | undefined {
  const said = observation.replace(/^\s*\[[^\]\s]+\]\s*/, '').trim();
  const found =
    /^(accepted in part|partially accepted|not accepted|accepted|noted)\s*(?:[.;:,!]\s*|\s[-–—]\s+|$)([\s\S]*)$/i.exec(
      said,
    );
  if (!found) return undefined;
  const word = found[1]!.toLowerCase();
  const disposition = word === 'partially accepted' ? 'accepted-in-part' : (word.replaceAll(' ', '-') as Disposition);
  return { disposition, because: found[2]!.trim() };
}

/** The first words of a comment. */
export function excerpt({ comment, proposed = '' }: Pick<CommentRecord, 'comment' | 'proposed'>): string {
  const line = (comment || proposed).replace(/\s+/g, ' ').trim();
  return line.length > 70 ? `${line.slice(0, 67).trimEnd()}…` : line;
}
