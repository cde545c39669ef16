/** Finds the edition that a text names right beside a number. */
export interface EditionReader {
  after(text: string): SaidEdition | undefined;
  before(text: string): string | undefined;
}

export interface SaidEdition {
  readonly edition: string;
  /** It stands in a bracket right behind one number, so that it may not speak for a list before it. */
  readonly bracketed: boolean;
  /** It stands right beside the number, and so speaks for its being cited as well. */
  readonly beside: boolean;
}

/**
 * Reads "3.2.1 (2014)", "3.2.1 of the 2014 edition", "2018 edition, 3.2.1". A year said as an edition counts even if no
 * such edition is known: then nothing is carried, rather than carried wrongly. "under 3.2.1 in 2014" says when, not
 * which edition. What is said need not be called an edition: "the 2014 book", "2014 numbering", "2018's 9.1.3".
 */
export function editionReader(editions: readonly string[]): EditionReader {
  const known = [...editions].sort((a, b) => b.length - a.length).map(e => e.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  const any = `(${[...known, '(?:19|20)\\d\\d'].join('|')})(?![\\p{L}\\p{N}]|\\.\\p{N})`;
  const what =
    '(?:ed(?:itio)?n|ed\\.|book|numbering|numbers|catalog(?:ue)?|version|issue|requirements|rules|text|tables?|one|copy)';
  const forms = [
    `\\s*[([]\\s*(?:the\\s+)?(?:edition\\s+)?${any}(?:\\s+${what})?\\s*[)\\]]`,
    `\\s*,?\\s*\\(?(?:of|in|from|under|per)?\\s*(?:the\\s+)?${any}\\s+${what}`,
    `\\s*,?\\s*\\(?(?:of|in|from|under|per)?\\s*(?:the\\s+)?(?:\\p{L}+\\s+)?ed(?:ition|\\.)\\s+(?:of\\s+)?${any}`,
    `\\s+(?:of|from)\\s+(?:the\\s+)?${any}`,
    `\\s*,?\\s*\\(?(?:of|in|from|under|per)\\s+${any}['’]s\\s+${what}`,
  ].map(form => new RegExp(`^${form}`, 'iu'));
  const before = new RegExp(
    `(?<![\\p{L}\\p{N}])(${known.join('|') || '(?!)'}):\\s*["“]?$|(?:${any}\\s+(?:\\p{L}+\\s+)?${what}|edition\\s+(?:of\\s+)?${any})[^.;!?\\d]{0,40}$|${any}['’]s\\s+(?:\\p{L}+\\s+)?$`,
    'iu',
  );
  return {
    after: text => {
      for (const [at, form] of forms.entries()) {
        const edition = form.exec(text)?.[1];
        if (edition !== undefined) return { edition, bracketed: at === 0, beside: true };
      }
      return undefined;
    },
    before: text => {
      const said = before.exec(text);
      return said?.slice(1).find(name => name !== undefined);
    },
  };
}
