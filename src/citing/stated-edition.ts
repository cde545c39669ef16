import type { Passage } from '../model/document.ts';

const SUBJECT =
  '(?:(?:all|the|these|item|requirement|section|clause)\\s+)*(?:numbers?|numbering|references?|citations?)|(?:this|these|the)\\s+(?:\\p{L}+\\s+){0,2}(?:documents?|lessons?|courses?|notes?|checklists?|guides?|handouts?|handbooks?|manuals?|sheets?|quiz|pages?|modules?|materials?|leaflets?|slides?|forms?|lists?)';
const FOLLOWS =
  '(?:(?:in this \\p{L}+|below|here|used|given|quoted|cited)\\s+)*(?:are|is|follows?|refers?|cites?|uses?|quotes?|were|was|has been|have been|belongs?)?\\s*(?:(?:those|numbers|numbered|taken|written|based|made|meant|valid|as|still|all)\\s+)*(?:of|on|from|to|in|by|for|as in|after|under|according to)?';

/**
 * The edition that a document says its numbers follow: "All numbers are those of the 2018 edition", "This lesson
 * follows edition 2018". Undefined where none is said, or two are.
 */
export function statedEdition(passages: readonly Passage[], editions: readonly string[]): string | undefined {
  const names = [...editions].sort((a, b) => b.length - a.length).map(e => e.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  if (names.length === 0) return undefined;
  const name = `(?<![\\p{L}\\p{N}.])(${names.join('|')})(?![\\p{L}\\p{N}]|\\.\\p{N})`;
  const stated = new RegExp(
    `(?:${SUBJECT})\\s+${FOLLOWS}\\s*(?:the\\s+)?(?:${name}\\s+(?:edition|book|numbering|catalog(?:ue)?|issue|version)|edition\\s+(?:of\\s+)?${name})`,
    'giu',
  );
  const found = new Set<string>();
  for (const { text } of passages)
    for (const m of text.replace(/\u00ad/g, '').matchAll(stated)) found.add((m[1] ?? m[2])!);
  return found.size === 1 ? [...found][0] : undefined;
}
