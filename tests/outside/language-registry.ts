import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { packedFiles } from './packed.ts';

/** A language subtag with what the registry says became of it. */
export interface Subtag {
  readonly subtag: string;
  readonly name: string;
  readonly deprecated: boolean;
  /** Its sole successor, or several ("see …"); empty where there is none. */
  readonly successors: readonly string[];
}

const PATH = 'data/json/registry.json';

/** The registry as of 2014 and 2015 (language-subtag-registry 0.3.2, 0.3.9) and 2025 (0.4.2), data/json/registry.json. */
export function readRegistries(checks: string) {
  const [of2014, of2015] = ['0.3.2', '0.3.9'].map(version =>
    packedFiles(`language-subtag-registry@${version}`, path => path === PATH, checks)?.get(PATH),
  );
  const here = createRequire(import.meta.url).resolve(`language-subtag-registry/${PATH}`);
  if (of2014 === undefined || of2015 === undefined) return undefined;
  return { 2014: parse(of2014), 2015: parse(of2015), 2025: parse(readFileSync(here, 'utf8')) };
}

interface Entry {
  readonly Type: string;
  readonly Subtag: string;
  readonly Description: readonly string[];
  readonly Deprecated?: string;
  readonly 'Preferred-Value'?: string;
  readonly Comments?: readonly string[];
}

function parse(source: string): readonly Subtag[] {
  const entries = (JSON.parse(source) as Entry[]).filter(e => e.Type === 'language');
  return entries.map(e => {
    const see = /^see (.*)$/.exec((e.Comments ?? []).join(' '))?.[1]?.split(/,\s*/) ?? [];
    const successors = e['Preferred-Value'] === undefined ? see : [e['Preferred-Value']];
    const deprecated = e.Deprecated !== undefined;
    return { subtag: e.Subtag, name: e.Description[0]!, deprecated, successors: deprecated ? successors : [] };
  });
}
