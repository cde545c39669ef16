import type { Decisions } from '../carryover/decisions.ts';
import { type Question, questionRows } from '../carryover/questions.ts';
import type { Joint } from '../crosswalk/joint.ts';
import { typeName } from '../model/settings.ts';
import type { AskedQuestion } from './carry-request.ts';

/**
 * Questions as a page shows them, in their order; answers that still hold stand in their cells.
 *
 * @param jointOf the way from the edition that the lines or places of a question cite
 */
export function askedQuestions(
  questions: readonly Question[],
  decisions: Decisions | undefined,
  jointOf: (edition: string) => Joint,
): readonly AskedQuestion[] {
  const rows = questionRows(questions, decisions);
  return questions.map(({ type, edition, outcome }, at): AskedQuestion => {
    const joint = jointOf(edition);
    const old = outcome.from === undefined ? undefined : joint.old.get(outcome.from);
    return {
      cells: rows[at]!.map(String),
      typeName: type === undefined ? '' : typeName(joint.to.settings, type),
      ...(old ? { from: { id: old.id, title: old.title } } : {}),
      heirs: outcome.heirs.map(({ id, number, title }) => ({ id, number, title })),
      ...(outcome.heirs.some(h => h.id === '') ? { isMark: true } : {}),
    };
  });
}
