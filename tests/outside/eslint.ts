import { packedFiles } from './packed.ts';

export interface Rule {
  readonly name: string;
  readonly description: string;
  /** Names of the rules that the publisher names in its place; absent where the rule is not deprecated. */
  readonly replacedBy?: readonly string[];
}

type Release = '7.32.0' | '8.57.0' | '10.15.0';

/** What ESLint's packages say of their rules: `lib/rules/*.js` and the lists in `conf`. Read as text, never run. */
export interface Rules {
  readonly rules: Readonly<Record<Release, readonly Rule[]>>;
  /** Of 8.57.0, conf/replacements.json: rules removed before it, and the rules in their place. */
  readonly replacements: Readonly<Record<string, readonly string[]>>;
  /** Of 10.15.0, conf/rule-type-list.json: every rule ever removed, with its replacements. */
  readonly removed: readonly { readonly removed: string; readonly replacedBy: readonly string[] }[];
}

export function readRules(checks: string): Rules | undefined {
  const wanted = (path: string) => /^(lib\/rules\/[^/]+\.js|conf\/(replacements|rule-type-list)\.json)$/.test(path);
  const packages = (['7.32.0', '8.57.0', '10.15.0'] as const).map(v => packedFiles(`eslint@${v}`, wanted, checks));
  const [older, middle, newest] = packages;
  if (!older || !middle || !newest) return undefined;
  const list = JSON.parse(newest.get('conf/rule-type-list.json')!) as {
    removed: { removed: string; replacedBy: { rule: { name: string } }[] }[];
  };
  return {
    rules: { '7.32.0': rulesIn(older), '8.57.0': rulesIn(middle), '10.15.0': rulesIn(newest) },
    replacements: JSON.parse(middle.get('conf/replacements.json')!).rules,
    removed: list.removed.map(r => ({ removed: r.removed, replacedBy: r.replacedBy.map(by => by.rule.name) })),
  };
}

function rulesIn(files: ReadonlyMap<string, string>): Rule[] {
  return [...files].flatMap(([path, source]): Rule[] => {
    const name = /^lib\/rules\/(?!index\.js)(.+)\.js$/.exec(path)?.[1];
    if (name === undefined) return [];
    const replacedBy = replacementsIn(source);
    return [{ name, description: descriptionIn(source), ...(replacedBy ? { replacedBy } : {}) }];
  });
}

function descriptionIn(source: string): string {
  const docs = source.slice(source.search(/\bdocs: \{/));
  const [, double, single] = /description:\s*(?:"((?:[^"\\]|\\.)*)"|'((?:[^'\\]|\\.)*)')/.exec(docs)!;
  return (double ?? single)!.replace(/\\(.)/g, '$1');
}

/** Up to 8.57: `deprecated: true, replacedBy: ["a"]`. In 10.15: `deprecated: {…, replacedBy: [{ plugin, rule }]}`. */
function replacementsIn(source: string): string[] | undefined {
  if (/\bdeprecated: true/.test(source)) {
    const names = /\breplacedBy: \[([^\]]*)\]/.exec(source)?.[1] ?? '';
    return [...names.matchAll(/"([^"]+)"/g)].map(([, name]) => name!);
  }
  const start = source.search(/\bdeprecated: \{/);
  if (start < 0) return undefined;
  const note = source.slice(start, source.indexOf('\n\t\t},', start));
  const plugin = /\bplugin: \{\s*name: "([^"]+)"/.exec(note)?.[1];
  return [...note.matchAll(/\brule: \{\s*name: "([^"]+)"/g)].map(([, name]) => (plugin ? `${plugin}/${name}` : name!));
}
