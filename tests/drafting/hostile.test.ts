import { describe, expect, it } from 'vitest';
import { checkDrafts } from '../../src/drafting/check-drafts.ts';
import { loadLanguage } from '../../src/drafting/language.ts';

const language = await loadLanguage();
const SIZE = 20_000;

/** Texts that make a careless expression try again and again. */
const HOSTILE: Readonly<Record<string, string>> = {
  'one letter': 'a',
  'words without an end': 'replace the old ',
  'conditions that never close': 'if the where the when the ',
  'points without spaces': '1.2.3.',
  'numbers with dashes': '1 - 1 - ',
  'capitals and digits': 'AB12/AB-12 ',
  'open brackets': '(((',
  quotes: '" "',
  'references to nothing': 'in accordance with the the the ',
  commas: ', , and, ',
  purposes: 'in order to ensure that so that ',
  denials: 'not no never ',
  'acts as things': 'the verification of ',
  'keeping in mind': 'keep the keep in ',
  'years that never come': 'shall remain free of ten ',
  choices: 'determine the most best right ',
  'line ends': '\n\r\n \n',
  'signs beyond the first plane': '\u{1F6E0}\u0301\u200d',
  'letters that grow when lower-cased': '\u0130\ufb03 ',
};

describe('a text that was made to hurt', () => {
  it.each(Object.entries(HOSTILE))('%s: is read to its end, and each finding has a place inside it', (_name, piece) => {
    const text = piece.repeat(Math.ceil(SIZE / piece.length));
    for (const { start, end } of checkDrafts([{ id: 'x', text }], language)) {
      expect(start).toBeGreaterThanOrEqual(0);
      expect(end).toBeLessThanOrEqual(text.length);
    }
  });
});
