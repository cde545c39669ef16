import type { Rule, Spot } from './rule.ts';

/** Two words for one strength of duty: a reader looks for a difference that nobody meant. */
export const mixedModals: Rule = {
  name: 'mixed-modals',
  bad: [
    { text: 'The joint shall be sealed. The sealant must cure for 24 hours.' },
    { text: 'Staff should wash hands and shall wear hairnets.' },
  ],
  good: [
    { text: 'The joint shall be sealed. The sealant may be tooled.' },
    { text: 'Should the alarm sound, the valve shall be closed.' },
  ],
  find: ({ plain }) => {
    const seen = new Map<string, Spot>();
    for (const match of plain.matchAll(/(?<![\p{L}\p{N}-])(?:shall|must|should|ought to)(?![\p{L}\p{N}-])/giu)) {
      const modal = match[0].toLowerCase().replace('ought to', 'should');
      if (modal === 'should' && !followsSubject(plain, match.index)) continue;
      const first = [...seen.keys()][0];
      const message = `"${modal}" stands beside "${first}"; use one word for one strength of duty.`;
      if (!seen.has(modal)) seen.set(modal, { start: match.index, end: match.index + match[0].length, message });
    }
    return [...seen.values()].slice(1);
  },
};

/** "Should a leak be found" is a condition, no duty: it begins its clause. */
function followsSubject(plain: string, at: number): boolean {
  return /[\p{L}\p{N})"%]\s*$/u.test(plain.slice(Math.max(0, at - 40), at));
}
