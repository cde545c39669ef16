import type { Joint } from '../../crosswalk/joint.ts';
import type { Outcome } from '../../model/citation.ts';
import { resolveRange } from '../documents/ranges.ts';
import { type CitedNumber, type MarksOf, resolveCitation } from '../resolve.ts';
import { listed } from '../sentences.ts';
import type { NumberList } from './number-list.ts';

/**
 * What happens to a line that cites several items. A line has one answer, and what it adds and what it folds into hang
 * on one item; so a person is told what becomes of each, and puts each on a line of its own.
 */
export function resolveSeveral(
  joint: Joint,
  marks: MarksOf,
  cited: Omit<CitedNumber, 'number'>,
  { numbers, range }: NumberList,
): Outcome {
  const [first, last] = [numbers[0]!, numbers.at(-1)!];
  const outcomes = range
    ? [resolveRange(joint, marks, { ...cited, number: first }, last).outcome]
    : numbers.map(number => resolveCitation(joint, marks, { ...cited, number }));
  const heirs = new Map(outcomes.flatMap(o => o.heirs).map(h => [h.id, h]));
  const said = range ? `${first} to ${last}` : listed(numbers);
  return {
    kind: 'choose',
    cause: 'several-numbers',
    why: `The line cites several items, ${said}. ${outcomes.map(o => o.why).join(' ')}`,
    toDo: 'Put each number on a line of its own, and run again.',
    heirs: [...heirs.values()],
    ...(cited.type === undefined ? {} : { type: cited.type }),
  };
}
