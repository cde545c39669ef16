const RECORD =
  /^[\s>*_#|-]*(?:signed|inspected|approved|accepted)(?:\s+(?:off\s+)?(?:on|by)\b|\s*\*{0,2}:)\*{0,2}(?<rest>.*)$/gim;

/** A line of a document that is no plain text; cells of one table row share their `row`. */
export interface RecordText {
  readonly text: string;
  readonly row?: unknown;
}

/** As `recordLine`, of lines and table cells: in "| Signed: | A. Person |" the next cell says who; empty, it is a form. */
export function recordOf(lines: readonly RecordText[]): string | undefined {
  for (let at = 0; at < lines.length; at++) {
    const { text, row } = lines[at]!;
    const beside = row !== undefined && lines[at + 1]?.row === row ? ` ${lines[at + 1]!.text}` : '';
    const said = recordLine(text + beside);
    const isBare = row !== undefined && beside === '' && /:\W*$/.test(text);
    if (said !== undefined && !isBare) return said;
  }
  return undefined;
}

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
