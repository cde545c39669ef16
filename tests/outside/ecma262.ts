import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

/**
 * Builds of the ECMA-262 bibliography, oldest first: @tc39/ecma262-biblio 2.0.2285 to 2.2.3180, `biblio.json`. The
 * names of the aliases are those of package.json.
 */
export const BUILDS = {
  2285: 'ecma262-2022',
  2336: 'ecma262-2022b',
  2407: 'ecma262-2022c',
  2775: 'ecma262-2023',
  3018: 'ecma262-2025',
  3175: 'ecma262-2025b',
  3180: 'ecma262-2025c',
} as const;

export interface Clause {
  readonly id: string;
  readonly number: string;
  readonly title: string;
}

const require = createRequire(import.meta.url);

/** The clauses of one build, with the ids that the publisher gave them. Where a clause stands, its number tells. */
export function clausesOf(build: keyof typeof BUILDS): Clause[] {
  const source = readFileSync(require.resolve(BUILDS[build]), 'utf8');
  const { entries } = JSON.parse(source) as { entries: (Clause & { type: string })[] };
  return entries.filter(e => e.type === 'clause').map(({ id, number, title }) => ({ id, number, title }));
}
