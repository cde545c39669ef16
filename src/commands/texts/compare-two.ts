import { type Comparison, compareTexts } from '../../content/compare-texts.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Ports } from '../ports/ports.ts';

export interface ComparedTwo extends Comparison {
  /** The texts as they were compared. */
  readonly from: string;
  readonly to: string;
  /** Neither text looks like English, which is all that is read besides numbers and units. */
  readonly foreign: boolean;
}

/** Compares two texts, each given outright or as the name of a text file. */
export async function compareTwo(ports: Ports, old: string, next: string): Promise<ComparedTwo> {
  const [from, to] = [await textOf(ports, old), await textOf(ports, next)];
  return { from, to, ...compareTexts(from, to), foreign: !isEnglish(from) && !isEnglish(to) };
}

/** What looks like a text file's name has to be one: `compare old.txt new.txt` would else compare two names. */
async function textOf(ports: Ports, told: string): Promise<string> {
  const named = /^\S[^\n]{0,250}\.(?:txt|md|text|markdown)$/i.test(told.trim());
  const other = /^\S*\.(?:csv|xlsx|docx|pdf|html?|json|pptx|doc|rtf|odt)$/i.test(told.trim());
  if (other) {
    throw new CatalogError(
      'BadFile',
      `${told} is no plain text; give two texts or two .txt files, or a table of many pairs with --pairs.`,
      { path: told },
    );
  }
  if (!named) return told.trim();
  const bytes = await ports.files.read(told);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes).trim();
  } catch {
    throw new CatalogError('BadFile', `${told} is not UTF-8 text; save it as UTF-8 and try again.`, { path: told });
  }
}

const ENGLISH = /\b(?:the|shall|must|may|should|of|and|or|is|are|be|at|to|with|for|by|no|not|in|on|from|an?)\b/i;

function isEnglish(text: string): boolean {
  const words = text.match(/\p{L}+/gu) ?? [];
  return words.length < 3 || (ENGLISH.test(text) && !/[äöüßéèêàçñ]/i.test(text));
}
