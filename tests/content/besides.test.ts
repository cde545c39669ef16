import { describe, expect, it } from 'vitest';
import { isPair, marksOf } from '../../src/content/links/marks.ts';
import { evidenceIn, tellEvidence } from '../../src/model/duty-evidence.ts';
import type { Verification } from '../../src/model/item.ts';
import { smallEditions } from '../audit/small-editions.ts';

const LID = 'Close the lid.';
const OIL = 'Oil the hinge of each door.';
const covering = (how: string): Verification => ({ when: 'before-covering', how });
const completion = (how: string): Verification => ({ when: 'at-completion', how });

type Verified = readonly Verification[] | undefined;
const beside = (verified: Verified) => (verified ? { verified } : undefined);

function told(old: Verified, now: Verified, text = LID) {
  const { joint, texts } = smallEditions(
    [['o', 'Lid', text, undefined, beside(old)]],
    [['n', 'Lid', text, undefined, beside(now)]],
    [['o', 'n']],
  );
  const marks = marksOf(joint, joint.crosswalk.links.find(isPair)!, texts);
  return [marks.duty, ...evidenceIn(marks).map(tellEvidence)];
}

describe('verification beside equal texts', () => {
  it('is told and makes no duty of its own where one edition does not name it', () => {
    expect(told(undefined, [covering('by rule')])).toEqual(['same', 'verification named: "before covering, by rule"']);
    expect(told([covering('by rule')], undefined)).toEqual([
      'same',
      'verification no longer named: "before covering, by rule"',
    ]);
  });

  it('is told in other words', () => {
    expect(told([covering('look at the lid')], [covering('look at the lid and the hinge')])).toEqual([
      'same',
      'verified in other words: "before covering, look at the lid" → "before covering, look at the lid and the hinge"',
    ]);
    expect(told([covering('lid; hinge')], [covering('lid'), covering('hinge')])).toEqual(['same']);
  });

  it('has to be read at other moments, and where none is said on purpose', () => {
    expect(told([covering('by eye')], [completion('by eye')])).toEqual([
      'unclear',
      'verified at other moments: "before covering, by eye" → "at completion, by eye"',
    ]);
    expect(told([covering('by eye')], [covering('by eye'), completion('by eye')])[0]).toBe('unclear');
    expect(told([covering('by eye')], [])[0]).toBe('unclear');
  });

  it('is never the same over other values, which the texts do not state', () => {
    expect(told([covering('1 bar for 10 min')], [covering('3 bar for 10 min')])[0]).toBe('unclear');
    expect(told([covering('every lid')], [covering('every lid, within 24 hours')])[0]).toBe('unclear');
    const text = 'The lid shall be at least 30 mm thick.';
    expect(told([covering('by rule')], [covering('by rule: 30 mm')], text)[0]).toBe('same');
  });

  it('has to be read where no text says anything else', () => {
    expect(told([covering('by eye')], [covering('by hand')], '')[0]).toBe('unclear');
    expect(told(undefined, [covering('by hand')], '')[0]).toBe('unclear');
  });

  it('may be that of a sibling that went into the same heir', () => {
    const merged = (now: Verified) => {
      const { joint, texts } = smallEditions(
        [
          ['1', 'Lid', LID, undefined, beside([covering('by eye')])],
          ['2', 'Hinge', OIL, undefined, beside([completion('by hand')])],
        ],
        [['n', 'Lid and hinge', `${LID} ${OIL}`, undefined, beside(now)]],
        [
          ['1', 'n'],
          ['2', 'n'],
        ],
      );
      const pairs = joint.crosswalk.links.filter(isPair);
      return pairs.map(link => evidenceIn(marksOf(joint, link, texts)).map(tellEvidence));
    };
    expect(merged([covering('by eye'), completion('by hand')])).toEqual([[], []]);
    expect(merged([completion('by hand')])).toEqual([
      ['verified at other moments: "before covering, by eye" → "at completion, by hand"'],
      [],
    ]);
  });
});
