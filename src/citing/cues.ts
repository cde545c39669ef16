import type { Settings } from '../model/settings.ts';

/**
 * A word before a number that says what the number is. `level`: the catalog's own name of a level (Work item). `common`:
 * what people call a place in any catalog (item, section, §). `pointing`: see, per, according to.
 */
export interface Cue {
  readonly word: string;
  readonly kind: 'level' | 'common' | 'pointing';
}

export interface CueReader {
  /** The cue that ends right before a number. */
  before(text: string): Cue | undefined;
  /** How long a cue is that begins a text and stands before a number of a list: "and items 3.2". */
  leads(text: string): number;
  /** How long a word is that begins a text and calls what follows it an item of some level; 0 where none does. */
  calls(text: string): number;
}

const COMMON =
  'items?|sections?|sects?\\.?|secs?\\.?|sub-?sections?|requirements?|reqs?\\.?|reqts?\\.?|clauses?|sub-?clauses?|cls?\\.?|paragraphs?|paras?\\.?|provisions?|entry|entries|nos?\\.|nrs?\\.|numbers?|numbered|rules?|points?|§+|¶+|#';
const POINTING =
  'see|see also|cf\\.?|per|as per|viz\\.?|refers? to|referring to|referred to in|in accordance with|accord(?:ing)? (?:to|with)|in line with|compl(?:y|ies|ying|iance) with|conforms? to|required (?:by|in|under)|asked (?:by|for in)|demanded by|set out in|laid down in|described in|stated in|specified in|given in|listed in|governed by|citing|cites?|cited|quoting|quotes?';
const GAP = '\\s*["“‘\'*_]*[:([]?["“‘\'*_]*\\s*';

const BOOK_WORDS =
  /^(?:rules|standards?|specifications?|code|regulations?|instructions|guidelines|criteria|directives?|provisions?|ordinances?|bylaws?)$/i;

/**
 * @param settings of the edition that is cited: the names of its levels are cues, and so are their initials (WI), what
 * its title calls it (rule 12.B.1) and the title's initials (WR 4.2)
 * @param annexes whether its first numbers may be letters: then an annex is a part of it, and no other book
 */
export function cueReader(settings: Settings, annexes = false): CueReader {
  const called = titleWords(settings.title).flatMap(word =>
    BOOK_WORDS.test(word) ? [namesOf(word.replace(/s$/i, ''))].flat() : [],
  );
  const levels = [
    ...settings.levels.flatMap(l => namesOf(l.name)),
    ...called,
    ...initialsOf(settings.title),
    ...(annexes ? ['annex(?:es)?', 'appendix', 'appendices'] : []),
  ].join('|');
  const level = new RegExp(`(?<![\\p{L}\\p{N}-])(${levels || '(?!)'})${GAP}$`, 'iu');
  const common = new RegExp(`(?<![\\p{L}])(${COMMON})${GAP}$`, 'iu');
  const pointing = new RegExp(`(?<![\\p{L}])(${POINTING})${GAP}$`, 'iu');
  const leading = new RegExp(
    `^(?:(?:the|also|both|in|by|under|to|of|see|with)\\s+){0,2}(?:(?:${[levels, COMMON].filter(Boolean).join('|')})\\.?\\s*)?`,
    'iu',
  );
  const calling = new RegExp(`^(?:${[levels, COMMON].filter(Boolean).join('|')})\\.?\\s+`, 'iu');
  return {
    calls: text => calling.exec(text)?.[0].length ?? 0,
    before: text => {
      for (const [kind, words] of [
        ['level', level],
        ['common', common],
        ['pointing', pointing],
      ] as const) {
        const word = words.exec(text)?.[1];
        if (word !== undefined) return { word: word.toLowerCase(), kind };
      }
      return undefined;
    },
    leads: text => leading.exec(text)?.[0].length ?? 0,
  };
}

/** The initials by which a catalog of this title may be called: all of them, or those of a beginning of two words and more. */
export function initialsOf(title: string): readonly string[] {
  const initials = titleWords(title).map(w => w[0]!.toUpperCase());
  return initials.length < 2
    ? []
    : initials
        .slice(1)
        .map((_, at) => initials.slice(0, at + 2).join(''))
        .reverse();
}

function titleWords(title: string): readonly string[] {
  return (title.match(/[\p{L}\p{N}]+/gu) ?? []).filter(w => !/^(?:of|for|the|and|in|to|on|a|an)$/i.test(w));
}

/** Whether a cue is a name of this level: "Parts" names the level Part. */
export function isNamed(cue: Cue, level: string): boolean {
  return namesOf(level).some(name => new RegExp(`^(?:${name})$`, 'iu').test(cue.word));
}

/** An import without names of levels calls them "Level 1"; people then say Part 3 or Chapter 3 of the first one. */
const UNNAMED = /^level (\d+)$/i;
const FIRST_LEVEL = ['parts?', 'chapters?', '(?:pt|ch|chap)s?\\.'];

function namesOf(level: string): readonly string[] {
  const unnamed = UNNAMED.exec(level)?.[1];
  if (unnamed !== undefined) return unnamed === '1' ? FIRST_LEVEL : [];
  const name = level
    .toLowerCase()
    .replace(/[^\p{L}\p{N} ]/gu, '')
    .trim();
  if (name === '') return [];
  const plural = name.endsWith('y') ? `${name}|${name.slice(0, -1)}ies` : `${name}s?`;
  const words = name.split(/\s+/);
  if (words.length > 1) return [plural, `${words.map(w => w[0]).join('')}s?`];
  // ch. 3, sect. 3.2; of a shorter name the beginning may be a word: it., no.
  return name.length < 6 ? [plural] : [plural, `(?:${[2, 3, 4].map(n => name.slice(0, n)).join('|')})s?\\.`];
}
