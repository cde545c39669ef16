import { retentionOf } from '../content/lost.ts';
import { readText } from '../content/reading.ts';
import type { Joint } from '../crosswalk/joint.ts';
import { type BareTexts, type EditionTexts, textsAfter } from './old-sayings.ts';

/**
 * Texts with the values that changed between them. It stands apart from all that only uses them: telling a change takes
 * the language library and its model, which a page in a browser is spared by being handed the changes ready-made.
 */
export function withChanges(joint: Joint, texts: BareTexts): EditionTexts {
  return {
    ...texts,
    changed: id => {
      const text = texts.from(id);
      if (text === undefined) return [];
      const after = textsAfter(joint, texts, id).map(t => readText(t));
      return retentionOf(readText(text), after).changed.map(({ start, end, to }) => ({ start, end, to }));
    },
  };
}
