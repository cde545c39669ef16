import type { Catalog } from '../../store/open.ts';
import { citeFiles } from '../documents/cite-files.ts';
import { namesApart } from '../documents/document-set.ts';
import type { Ports } from '../ports/ports.ts';

/** A document and where in it an item is cited, in words: "line 12", "slide 5". */
export interface CitingLesson {
  readonly file: string;
  readonly places: readonly string[];
}

/** Where lessons cite the numbers of each edition. */
export interface LessonsCiting {
  of(edition: string, number: string): readonly CitingLesson[];
}

/**
 * Reads lessons once and remembers what they cite. What is in doubt is left out: a reader who follows it would have to
 * judge it anew, and `cite` lists it.
 *
 * @param edition that a lesson means where it does not say
 */
export async function lessonsCiting(
  ports: Pick<Ports, 'files' | 'progress'>,
  catalog: Catalog,
  inputs: readonly string[],
  edition: string,
): Promise<LessonsCiting> {
  // Readers need no path of the server.
  const names = namesApart(inputs);
  const found = new Map<string, Map<string, Set<string>>>();
  for (const line of await citeFiles(ports, catalog, { inputs: [...names.keys()], edition })) {
    if (!line.certain) continue;
    for (const number of line.numbers) {
      const key = JSON.stringify([line.edition, number]);
      const files = found.get(key) ?? new Map<string, Set<string>>();
      found.set(key, files);
      const name = names.get(line.file)!;
      files.set(name, (files.get(name) ?? new Set()).add(line.place));
    }
  }
  return {
    of: (edition, number) =>
      [...(found.get(JSON.stringify([edition, number])) ?? [])].map(([file, places]) => ({
        file,
        places: [...places],
      })),
  };
}
