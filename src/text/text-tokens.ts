/** A text in pieces that together are the text: words, numbers (2.5, 1:80), spaces and single marks. */
export function tokens(text: string): string[] {
  return text.match(/\p{N}+(?:[.,:]\p{N}+)*|[\p{L}\p{M}]+|\s+|[^\p{L}\p{M}\p{N}\s]/gu) ?? [];
}
