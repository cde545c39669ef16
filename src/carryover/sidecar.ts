/**
 * The edition mark that stands beside an output, as `NAME.fishplate.json`. It says from what the output was made and
 * what it was when it was made, so that a later run can tell an untouched output from an edited one.
 */
export interface Sidecar {
  readonly tool: 'fishplate';
  readonly from: string;
  readonly to: string;
  /** sha256 of the input's bytes, in hex. */
  readonly input: string;
  /** sha256 of the output's bytes, in hex. */
  readonly output: string;
  readonly counts: Readonly<Record<string, number>>;
  /** What stood under the output's name before, and where it is kept, so that `carry undo` can bring it back. */
  readonly before?: { readonly kept: string; readonly hash: string };
  /** sha256 of an output of an earlier run that this one replaces: killed between the two, it stands there still. */
  readonly replaces?: string;
  /** Places at which the output still says that it follows the older edition: nobody has decided that it does not. */
  readonly marks?: readonly { readonly place: string; readonly text: string }[];
  /** Further files of the same run beside the output: name to sha256. */
  readonly also?: Readonly<Record<string, string>>;
}

export function sidecarName(file: string): string {
  return `${file}.fishplate.json`;
}

export function writeSidecar(sidecar: Sidecar): string {
  const { tool, from, to, input, output, counts, marks, before, replaces, also } = sidecar;
  return `${JSON.stringify({ tool, from, to, input, output, counts, marks, before, replaces, also }, null, 2)}\n`;
}

/** The mark that a file's text holds; undefined where it is not one of ours. */
export function parseSidecar(text: string): Sidecar | undefined {
  try {
    const value = JSON.parse(text) as Partial<Sidecar> | null;
    const strings = [value?.from, value?.to, value?.input, value?.output];
    return value?.tool === 'fishplate' && strings.every(s => typeof s === 'string') ? (value as Sidecar) : undefined;
  } catch {
    return undefined;
  }
}
