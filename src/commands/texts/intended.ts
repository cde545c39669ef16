import { type Answer, textHash } from '../../drafting/answers.ts';
import { fixedAnswerFolder, parseFixedAnswers } from '../../format/fixed-answer-files.ts';
import { isRequirement } from '../../model/edition.ts';
import { groupBy } from '../../model/group-by.ts';
import type { Item } from '../../model/item.ts';
import type { Settings } from '../../model/settings.ts';
import { textsAsked } from '../../release/fixed-question-lines.ts';
import { REVIEW_QUESTIONS } from '../../release/fixed-questions.ts';
import type { Catalog } from '../../store/open.ts';
import { readBeside } from '../../store/read-beside.ts';

/**
 * What people answered with "intended, because ..." and whose texts still stand: a yes with a reason to a fixed question
 * answers every remark of the rules that speak against it. A yes without one was given when nothing was remarked on.
 */
export async function intendedAnswers(
  catalog: Catalog,
  edition: string,
  { settings, items }: { readonly settings: Settings; readonly items: readonly Item[] },
): Promise<readonly Answer[]> {
  const { records } = parseFixedAnswers(await readBeside(catalog, fixedAnswerFolder(edition)));
  if (records.length === 0) return [];
  const byId = new Map(items.map(i => [i.id, i]));
  const requirements = groupBy(
    items.filter(i => isRequirement(settings, i) && i.parent !== null),
    i => i.parent!,
  );
  return records.flatMap(record => {
    const item = byId.get(record.item);
    if (!item) return [];
    const below = isRequirement(settings, item) ? [] : (requirements.get(item.id) ?? []);
    const now = textsAsked(item, below, textHash);
    return record.answers
      .filter(a => a.answer === 'yes' && a.because.trim() !== '' && a.texts === now)
      .flatMap(({ question, because, by, date }) =>
        [item, ...below].flatMap(({ id, text }) =>
          (REVIEW_QUESTIONS.find(q => q.code === question)?.rules ?? []).map(rule => ({
            rule,
            subject: id,
            textHash: textHash(text ?? ''),
            because,
            by,
            date,
          })),
        ),
      );
  });
}
