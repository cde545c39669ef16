import { phraseList, spotsOf } from './phrases.ts';
import type { Rule, Term } from './rule.ts';

/** A term that the glossary gave up. Asked only where a glossary is given. */
export const deprecatedTerm: Rule = {
  name: 'deprecated-term',
  bad: [
    { text: 'Seal the weep slots.', context: { terms: [{ term: 'weep slot', deprecated: true, use: 'drain slot' }] } },
  ],
  good: [
    { text: 'Seal the drain slots.', context: { terms: [{ term: 'weep slot', deprecated: true, use: 'drain slot' }] } },
  ],
  find: (text, { terms }) =>
    (terms ?? [])
      .filter(t => t.deprecated)
      .flatMap(t =>
        spotsOf(
          text,
          expression(t),
          words => `"${words}" is no longer a term of the glossary; ${t.use ? `write "${t.use}"` : 'use another'}.`,
        ),
      ),
};

const known = new WeakMap<Term, RegExp>();

function expression(term: Term): RegExp {
  let made = known.get(term);
  if (!made) {
    made = phraseList(`${term.term.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s+/g, '[ -]')}(?:s|es)?`);
    known.set(term, made);
  }
  return made;
}
