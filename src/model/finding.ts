export type Severity = 'error' | 'warning' | 'note';

/** Where in the user's data something was seen. */
export interface FindingPlace {
  readonly file?: string;
  readonly line?: number;
  readonly column?: number;
}

/** Anything to say about the user's data. Findings are returned, all of them; they are never thrown. */
export interface Finding {
  readonly rule: string;
  readonly severity: Severity;
  /** What it is about: an item id, a file, an edition. */
  readonly subject: string;
  /** One sentence. */
  readonly message: string;
  readonly place?: FindingPlace;
  readonly data?: Readonly<Record<string, unknown>>;
}

/** `file:line: message`, as editors understand it. */
export function findingLine(f: Finding): string {
  const { file, line, column } = f.place ?? {};
  const at = [file, line, column].filter(x => x !== undefined).join(':');
  return `${at ? `${at}: ` : ''}${f.severity}: ${f.message} [${f.rule}]`;
}
