import { words } from '../text/words.ts';
import { phraseList } from './phrases.ts';
import type { Sentence } from './read-text.ts';
import type { Rule, Spot } from './rule.ts';

/** A purpose said once is help; said twice, or said again below an item that states it, it is a second text to maintain. */
export const purposeTwice: Rule = {
  name: 'purpose-twice',
  bad: [
    { text: 'In order to stop leaks, seal the joint so that no water gets in.' },
    { text: 'In order to avoid corrosion, coat the bolts with zinc so they do not corrode.' },
    { text: 'Tape the seam to prevent drafts and to ensure that no air leaks.' },
    {
      text: 'Seal the hatch so that warm air stays below the attic.',
      context: { purpose: 'Keep warm air below the attic.' },
    },
  ],
  good: [
    { text: 'Seal the joint to prevent leaks.' },
    { text: 'The clip is designed to allow movement.' },
    { text: 'Seal the hatch so that warm air stays below.', context: { purpose: 'Reduce noise from the street.' } },
  ],
  find: ({ plain, text, sentences }, { purpose }) => {
    const said = [...plain.matchAll(PURPOSE)].filter(
      m => !COMPLEMENT.test(plain.slice(Math.max(0, m.index - 40), m.index)),
    );
    const spots: Spot[] = said.slice(1).map(m => ({
      start: m.index,
      end: m.index + m[0].length,
      message: `"${text.slice(m.index, m.index + m[0].length)}" states a purpose a second time; state it once.`,
    }));
    if (spots.length === 0)
      spots.push(...repeated(text, plain, said), ...saidInOtherWords(text, plain, sentences, said));
    const first = said[0];
    if (first && purpose !== undefined && repeats(plain.slice(first.index + first[0].length), purpose)) {
      const message = 'The item states this purpose already; leave it out here.';
      spots.unshift({ start: first.index, end: first.index + first[0].length, message });
    }
    return spots;
  },
};

const AIM_VERBS =
  '(?:ensure|make sure|prevent|avoid|protect|allow|enable|reduce|minimi[sz]e|guarantee|maintain|stop|limit|achieve|facilitate|guard|safeguard|preserve|permit|help|improve|exclude|eliminate|keep|give|provide|promote|make it|let|block|bar|stop|assure|secure|deter|discourage|resist|accommodate|guarantee|retain|aid|assist|save|lessen|control|support|hold)';

const PURPOSE = phraseList(
  'in order (?:to|that|for)',
  'so that',
  'so (?:it|they|nobody|no one|nothing)(?= )',
  'so as (?:not )?to',
  `to (?:help |better |further )?${AIM_VERBS}`,
  'for the purposes? of',
  '(?:the|its|their|whose) (?:purpose|aim|intention|intent|object|objective|goal|function|job|point) (?:of this |being |here )?(?:is|being)',
  'with the (?:aim|intention|purpose|object|goal|objective) of',
  '(?:this|which|thus|thereby|thereby|and so|hence) (?:will |helps? to |helps? |serves? to |is to |is done to |is intended to )?(?:ensur|prevent|avoid|protect|allow|enabl|reduc|minimi[sz]|guarantee|keep|stop|maintain)(?:e?s|ing|e)?(?= )',
  'such that',
  'thereby',
  'lest',
  'because',
);

/**
 * One purpose in clear words, and the same once more: as a bare noun ("for strength"), as a thing ("as a barrier to
 * ..."), or by saying nothing that was not said before ("level the unit; their purpose is to make it level").
 */
function repeated(text: string, plain: string, said: readonly RegExpExecArray[]): Spot[] {
  const clear = said[0];
  if (!clear) return [];
  const [start, end] = [clear.index, clear.index + clear[0].length];
  const clause = contentOf(plain.slice(end, end + clauseLength(plain, end)));
  const before = contentOf(plain.slice(0, start));
  const empty = clause.length > 0 && clause.every(w => before.some(b => alike(w, b)));
  const hinted = [...plain.matchAll(HINT)].some(m => m.index + m[0].length <= start || m.index >= end);
  if (!empty && !hinted) return [];
  return [{ start, end, message: `"${text.slice(start, end)}" says again what the text says already; state it once.` }];
}

/**
 * Every way to say what something is for. Two of them that share a word say one thing twice:
 *
 *   to catch drips, ... catching what drips        this keeps it dry, as it is there to keep it dry
 */
function saidInOtherWords(
  text: string,
  plain: string,
  sentences: readonly Sentence[],
  said: readonly RegExpExecArray[],
): Spot[] {
  const clear = said.map(m => ({ start: m.index, end: m.index + m[0].length }));
  const soft = [
    ...infinitives(sentences),
    ...[...plain.matchAll(SOFT)].map(m => ({ start: m.index, end: m.index + m[0].length })),
  ];
  const all = [...clear, ...soft.filter(s => !clear.some(c => s.start < c.end && c.start < s.end))]
    .sort((a, b) => a.start - b.start)
    .slice(0, MOST_PURPOSES);
  const content = all.map(({ start, end }, at) => {
    const until = Math.min(end + clauseLength(plain, end), all[at + 1]?.start ?? plain.length);
    return contentOf(`${plain.slice(start, end).replace(LEADS, '')} ${plain.slice(end, until)}`);
  });
  for (let at = 1; at < all.length; at++) {
    const again = content[at]!.some(w => content.slice(0, at).some(c => c.some(b => alike(w, b))));
    if (!again) continue;
    const { start, end } = all[at]!;
    return [{ start, end, message: `"${text.slice(start, end)}" says a purpose again; state it once.` }];
  }
  return [];
}

/** More purposes than this in one text need no further proof. */
const MOST_PURPOSES = 20;

/** "to catch drips" behind a noun, or at the beginning of a sentence. */
function infinitives(sentences: readonly Sentence[]): { start: number; end: number }[] {
  return sentences.flatMap(({ segments }) =>
    segments.flatMap(({ words }) =>
      words.flatMap((word, at) => {
        const next = words[at + 1];
        if (word.lower !== 'to' || next?.tag !== 'VERB' || next.lemma !== next.lower) return [];
        const before = words[at - 1];
        return before === undefined || /NOUN|PUNCT|PRON/.test(before.tag) ? [{ start: word.start, end: next.end }] : [];
      }),
    ),
  );
}

const SOFT =
  /(?<![\p{L}-])(?:(?:this|which|that|it) (?:prevent|stop|avoid|keep|ensure|allow|let|protect|reduce|guard|block|hold|catche?|make|give|help|save|enable)s(?= )|(?:meant|intended|there|designed|serves?|needed) to [\p{L}]{3,14}|(?:thus|thereby|hence|so) [\p{L}]{3,14}ing|(?<=, )(?:prevent|stopp|avoid|keep|ensur|allow|lett|protect|reduc|guard|block|hold|catch|mak|giv|help|sav|enabl)ing(?= )|(?:because|since|as otherwise|otherwise|lest|for the sake of|in the interest of|by way of|the reason (?:is|being))(?= ))/giu;
const LEADS =
  /^(?:to|this|which|that|it|meant|intended|there|designed|serves?|needed|thus|thereby|hence|so|in order|because|since)\s(?:to\s|that\s)?/i;

function clauseLength(plain: string, at: number): number {
  return plain.slice(at, at + 300).search(/[.;,]|$/);
}

const HINT =
  /(?<![\p{L}-])(?:for [\p{L}-]{3,20}(?=[,;.]| so | in order| and (?:to|so))|as an? (?:barrier|protection|guard|safeguard|precaution|means|defen[cs]e|deterrent|shield|measure)(?= )|to (?:let|make|hold|get|block|bar|shield|see|show)(?= ))/giu;

const LIGHT =
  /^(?:make|makes|made|done|does|have|been|being|that|this|with|from|into|which|their|they|will|shall|must|cannot|there|when|than|then|also|them|again|thing|help|helps|work|works)$/;

function contentOf(text: string): string[] {
  return words(text).filter(w => w.length > 3 && !LIGHT.test(w));
}

/** "bond" and "bonds", "access" and "accessible": words that begin alike. */
function alike(a: string, b: string): boolean {
  const length = Math.max(4, Math.min(a.length, b.length) - 2);
  return a.slice(0, length) === b.slice(0, length);
}

/** "designed to allow", "shall be able to resist": what a thing does, not why it is asked for. */
const COMPLEMENT =
  /(?:\b(?:designed|required|able|unable|needed|sufficient|enough|sized|rated|intended|made|used|arranged|set|configured|likely|necessary|shall|must|should|is|are|has|have|needs?|due|adequate|suitable|capable|programmed|tested|proved|proven|proportioned)|so that [^.;,]{0,30}|in order(?: not)?|so as(?: not)?)\s$/i;

/** Whether most of what a short purpose says stands in the words that follow. */
function repeats(said: string, purpose: string): boolean {
  const clause = new Set(
    words(said.slice(0, said.search(/[.;]|$/)))
      .filter(isContent)
      .map(stem),
  );
  const asked = words(purpose).filter(isContent).map(stem);
  const shared = asked.filter(w => clause.has(w)).length;
  return shared >= 2 && shared >= 0.5 * Math.min(asked.length, clause.size);
}

const isContent = (word: string) =>
  word.length > 3 && !/^(?:that|this|with|from|into|which|their|they|will|shall|must)$/.test(word);
const stem = (word: string) => word.replace(/(?:ing|ed|es|s)$/, '');
