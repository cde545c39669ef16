import { expect, it } from 'vitest';
import type { JobPolicy } from '../../src/carryover/jobs/job-policy.ts';
import { settledByPolicy } from '../../src/carryover/jobs/settled-by-policy.ts';
import { type MarksOf, resolveCitation } from '../../src/carryover/resolve.ts';
import { marksOf } from '../../src/content/links/marks.ts';
import { smallEditions } from '../audit/small-editions.ts';

const BOLTS = 'Fit at least 2 bolts.';
const MORE = 'Fit at least 3 bolts.';

it('a carried number is told with the verification that it now has', () => {
  const { joint, texts } = smallEditions(
    [['1', 'Lid', BOLTS]],
    [['2', 'Lid', BOLTS, undefined, { verified: [{ when: 'at-completion', how: 'count' }] }]],
    [['1', '2']],
  );
  expect(resolveCitation(joint, link => marksOf(joint, link, texts), { number: '1' })).toMatchObject({
    kind: 'carried',
    why: expect.stringMatching(/and asks the same\. Verification named: "at completion, count"\.$/),
  });
});

it('a policy settles no line without a type where the item ends for some', () => {
  const policy = { agency: 'Road office', fates: { stricter: 'carry' } } as unknown as JobPolicy;
  const settled = (now: readonly string[], type?: string) => {
    const { joint, texts } = smallEditions(
      [['1', 'Lid', BOLTS, ['villa', 'shop']]],
      [['2', 'Lid', MORE, now]],
      [['1', '2']],
    );
    const marks: MarksOf = link => marksOf(joint, link, texts);
    const asked = resolveCitation(joint, marks, { number: '1', ...(type && { type }) });
    return settledByPolicy(joint, marks, policy, asked).kind;
  };
  expect(settled(['villa', 'shop'])).toBe('carried');
  expect(settled(['shop'])).toBe('choose');
  expect(settled(['shop'], 'shop')).toBe('carried');
});
