import type { ToldReview } from '../commands/matching/open-told-review.ts';

/** What to run with the answers of a review: a table of the crosswalk, or lineage of the catalog. */
export function matchCommand({ tables, catalog, columns, answers }: ToldReview): string {
  const told = columns ? ['--columns', [...columns].map(([role, header]) => `${role}=${header}`).join(',')] : [];
  const words = ['fishplate', 'match', ...tables, ...told, '--answers', ...answers];
  const goal = catalog === undefined ? ['--out', 'crosswalk.csv'] : ['--catalog', catalog, '--record'];
  return [...words, ...goal]
    .map(word => (/^[\w./=,:@%+-]+$/.test(word) ? word : `'${word.replaceAll("'", "'\\''")}'`))
    .join(' ');
}
