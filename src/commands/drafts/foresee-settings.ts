import type { Settings } from '../../model/settings.ts';

/** What a draft says about its catalog that is not what it was, a sentence each. */
export function settingsChanges(before: Settings, after: Settings): string[] {
  if (before === after) return [];
  const { installationTypes: types, levels, numbering, ...rest } = after;
  const was = new Map(before.installationTypes.map(t => [t.id, t.name]));
  const left = before.installationTypes.filter(t => !types.some(a => a.id === t.id));
  const { installationTypes: _, levels: oldLevels, numbering: oldNumbering, ...oldRest } = before;
  const others = new Set([...Object.keys(rest), ...Object.keys(oldRest)] as (keyof typeof rest)[]);
  return [
    ...types.flatMap(({ id, name }) => {
      const old = was.get(id);
      if (old === undefined) return [`There is an installation type "${name}".`];
      return old === name ? [] : [`The installation type "${old}" is called "${name}".`];
    }),
    ...left.map(t => `There is no installation type "${t.name}" any more.`),
    ...(levels.length === oldLevels.length
      ? levels.flatMap(({ name }, n) => {
          const old = oldLevels[n]!.name;
          return old === name ? [] : [`The level "${old}" is called "${name}".`];
        })
      : [`There are ${levels.length} levels instead of ${oldLevels.length}.`]),
    ...(same(numbering, oldNumbering)
      ? []
      : [
          numbering.levels.some(l => l.style === 'printed')
            ? 'Items are numbered in another way.'
            : 'Items are numbered by their places from now on, without gaps.',
        ]),
    ...[...others].filter(key => !same(rest[key], oldRest[key])).map(key => `The catalog's ${WORDS[key]} changes.`),
  ];
}

const WORDS: Readonly<Record<Exclude<keyof Settings, 'installationTypes' | 'levels' | 'numbering'>, string>> = {
  title: 'title',
  publisher: 'publisher',
  language: 'language',
  fileLevel: 'division into files',
  withdrawalReasons: 'list of reasons for withdrawals',
  caution: 'caution',
};

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);
