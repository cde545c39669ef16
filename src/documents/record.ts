const RECORD =
  /^[\s>*_#|-]*(?:signed|inspected|approved|accepted)(?:\s+(?:off\s+)?(?:on|by)\b|\s*\*{0,2}:)\*{0,2}(?<rest>.*)$/gim;

/**
 * The line by which a text says that somebody signed or inspected it: "Signed: A. Person", "Inspected on 3 May by …".
 * A line still to be filled in ("Signed: ____") is a form, not a record.
 */
export function recordLine(text: string): string | undefined {
  for (const found of text.matchAll(RECORD)) {
    const rest = found.groups?.rest ?? '';
    if (/^[\s|]*(?:[_.…]{3,}[\s|_.…]*|\[\s*\][\s|]*)+/.test(rest)) continue;
    return found[0].trim();
  }
  return undefined;
}
