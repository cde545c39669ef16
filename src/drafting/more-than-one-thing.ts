import { type Obligation, obligationsOf } from './obligations.ts';
import type { Word } from './read-text.ts';
import type { Rule, Spot } from './rule.ts';

/**
 * Two obligations in one requirement: half of it can be met, and then nobody can say whether it was.
 *
 *   cut and remove the old pipe                    one act: both verbs share their object
 *   remove the old pipe and label the new one      two: each verb has its own
 */
export const moreThanOneThing: Rule = {
  name: 'more-than-one-thing',
  bad: [
    { text: 'Seal the joint with mastic and paint the frame.' },
    { text: 'The pipe shall be insulated and the valve labelled.' },
    { text: 'Fit the valve 300 mm above the floor. Test the circuit at 6 bar.' },
    { text: 'The crew shall flush the hose and close the valve.' },
    { text: 'The keeper shall open the hive, then smoke the frames.' },
    { text: 'The welder shall clean the joint. The welder shall prime the joint with zinc.' },
    { text: 'The hand shall drain the vat and rinse it with water of 60 °C.' },
  ],
  good: [
    { text: 'Cut and remove the old pipe.' },
    { text: 'The surface shall be straight and free of rust.' },
    { text: 'The fitter shall give the owner and manager a copy.' },
    { text: 'Fix the board at 600 mm centres. A board under 300 mm wide may be glued.' },
  ],
  find: text => {
    const obligations = text.sentences.flatMap((sentence, at) => obligationsOf(sentence).map(o => ({ o, at })));
    const spots: Spot[] = [];
    for (let i = 1; i < obligations.length; i++) {
      const [before, here] = [obligations[i - 1]!, obligations[i]!];
      const own = before.at === here.at && here.o.follows ? isOwnAct(before.o, obligations.length) : true;
      if (!own || (before.at === here.at && isOneThing(before.o, here.o))) continue;
      const { start, end } = spanOf(here.o);
      const words = text.text.slice(start, end);
      spots.push({ start, end, message: `"${words}" asks for another thing; give it a requirement of its own.` });
    }
    return spots;
  },
};

/** Verbs that name nothing by themselves. */
const BARE = new Set('be have remain stay exceed'.split(' '));
/** Words behind such a verb that are shown with it, at most. */
const SHOWN = 6;

/** "be" alone is nothing that anybody is asked for: "be of stainless steel" is. */
function spanOf({ verb, rest, passive }: Obligation): { start: number; end: number } {
  if (passive || !BARE.has(verb.lemma)) return verb;
  const stop = rest.findIndex(w => w.tag === 'PUNCT' || /^(?:and|or|that|which|when|where|so)$/.test(w.lower));
  const shown = rest.slice(0, stop < 0 ? SHOWN : Math.min(stop, SHOWN));
  let last = shown.length - 1;
  while (last >= 0 && /^(?:DET|ADP|CCONJ|PART)$/.test(shown[last]!.tag)) last--;
  return { start: verb.start, end: (shown[last] ?? verb).end };
}

/** In one sentence: a quality and a limit to it, or an act done to what the act before was done to. */
function isOneThing(before: Obligation, here: Obligation): boolean {
  if (before.verb.lemma === 'be') return true;
  const same = (a: readonly Word[], b: readonly Word[]) =>
    b.some(w => /^(?:it|them)$/.test(w.lower)) ||
    a.some(x => isNoun(x) && b.some(y => isNoun(y) && y.lemma === x.lemma));
  if (here.modal === 'order') return same([before.verb, ...before.rest], objectOf(here.rest));
  if (STATES.has(before.verb.lemma) && STATES.has(here.verb.lemma) && here.follows) return true;
  return here.negative && same(before.subject, here.subject);
}

/** Verbs of what a thing is like: "carry 2 kN and not exceed 40 kg" are two qualities of one thing. */
const STATES = new Set(
  'be have exceed withstand carry bear hold reach remain stay measure weigh contain resist lie last'.split(' '),
);

/** The words behind a verb up to the first preposition or comma. */
function objectOf(rest: readonly Word[]): readonly Word[] {
  const end = rest.findIndex(w => w.tag === 'ADP' || w.lower === ',');
  return end < 0 ? rest : rest.slice(0, end);
}

const isNoun = (word: Word) => /NOUN|PROPN|VERB/.test(word.tag);

/** Whether a verb joined by "and" is an act of its own: the verb before it has something to itself already. */
function isOwnAct(before: Obligation, all: number): boolean {
  if (isAlternative(before.rest)) return false;
  return hasOwnObject(before.rest) || all > 2;
}

/** "or" leaves a choice between two ways to do one thing. */
function isAlternative(rest: readonly Word[]): boolean {
  return rest.at(-1)?.lower === 'or';
}

function hasOwnObject(rest: readonly Word[]): boolean {
  // A determiner begins an object, though "the joint" is a quality to the tagger.
  return rest.some(w => /NOUN|PROPN|PRON|NUM|DET/.test(w.tag));
}
