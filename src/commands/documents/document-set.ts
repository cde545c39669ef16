import { dirname, join, relative, resolve, sep } from 'node:path';
import { sidecarName } from '../../carryover/sidecar.ts';
import { kindOfDocument } from '../../documents/kinds.ts';
import { CatalogError } from '../../model/errors.ts';
import type { Files } from '../ports/ports.ts';

/** A document to carry, and where its carried copy goes. */
export interface PlacedDocument {
  readonly input: string;
  /** Absent where the document is only read. */
  readonly out?: string;
  /** The output's path below the output folder, with forward slashes: its name in the review list. */
  readonly name: string;
}

/**
 * Places the outputs as the inputs stand to one another: files from one folder stand side by side, equal names from
 * two folders stay apart, and relative links between the documents go on leading where they led.
 *
 * @throws CatalogError BadArgument for kinds that cannot be carried, OutputIsInput where an output would be an input.
 */
export async function placeDocuments(
  files: Files,
  inputs: readonly string[],
  outDir: string,
): Promise<readonly PlacedDocument[]> {
  const placed = [...namesApart(inputs)].map(
    ([input, name]): PlacedDocument =>
      kindOfDocument(input) === 'pdf' ? { input, name } : { input, out: join(outDir, name), name },
  );
  const reserved = ['review.md', 'review.json'];
  for (const { input, name } of placed) {
    if (!reserved.includes(name)) continue;
    throw new CatalogError('BadArgument', `${input} has the name of the review list; rename it and run again.`, {
      input,
    });
  }
  for (const { input } of placed) {
    for (const made of [
      ...placed.flatMap(p => (p.out ? [p.out, sidecarName(p.out)] : [])),
      ...reserved.map(r => join(outDir, r)),
    ]) {
      if (!(await files.same(made, input))) continue;
      throw new CatalogError('OutputIsInput', `${made} would be written over an input; choose another output folder.`, {
        made,
      });
    }
    if (await files.same(dirname(input), outDir)) {
      throw new CatalogError('OutputIsInput', `${outDir} is the folder of ${input}; choose another output folder.`, {
        outDir,
      });
    }
  }
  return placed;
}

/** Each file once, with its path below the folder that all of them share: no two have one name. */
export function namesApart(inputs: readonly string[]): ReadonlyMap<string, string> {
  const unique = [...new Map(inputs.map(input => [resolve(input), input])).values()];
  const shared = sharedFolder(unique.map(i => dirname(resolve(i))));
  return new Map(unique.map(input => [input, relative(shared, resolve(input)).split(sep).join('/')]));
}

function sharedFolder(folders: readonly string[]): string {
  const [first = '', ...rest] = folders.map(f => f.split(sep));
  let length = first.length;
  for (const other of rest) {
    let at = 0;
    while (at < length && other[at] === first[at]) at++;
    length = at;
  }
  return (first as string[]).slice(0, length).join(sep) || sep;
}
