import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);

type Many<T> = T | readonly T[] | undefined;

interface Weakness {
  readonly attr: { readonly '@_ID': string; readonly '@_Name': string };
  readonly Description: string;
  readonly Extended_Description?: unknown;
  readonly Related_Weaknesses?: {
    readonly Related_Weakness: Many<{ readonly attr: Readonly<Record<string, string>> }>;
  };
  readonly Content_History: {
    readonly Modification?: Many<{ readonly Modification_Date: string; readonly Modification_Comment?: string }>;
  };
}

/** The weaknesses of one release: cwe-sdk 1.1.6 (CWE 4.6) and 1.1.19 (CWE 4.15), raw/cwe-dictionary.json. */
export function weaknessesOf(release: '4.6' | '4.15'): readonly Weakness[] {
  const path = require.resolve(`cwe-sdk-${release}/raw/cwe-dictionary.json`);
  return Object.values(JSON.parse(readFileSync(path, 'utf8')) as Record<string, Weakness>);
}

/** As rows of a table: below its primary parent in the research view (1000), and at its other parents there as well. */
export function asRow(weakness: Weakness) {
  const parents = list(weakness.Related_Weaknesses?.Related_Weakness)
    .map(r => r.attr)
    .filter(r => r['@_Nature'] === 'ChildOf' && r['@_View_ID'] === '1000')
    .sort((a, b) => Number(b['@_Ordinal'] === 'Primary') - Number(a['@_Ordinal'] === 'Primary'))
    .map(r => r['@_CWE_ID']!);
  const [parent = null, ...alsoAt] = new Set(parents);
  const { '@_ID': id, '@_Name': title } = weakness.attr;
  return { id, number: `CWE-${id}`, parent, also_at: alsoAt, title, text: weakness.Description };
}

/** What the publisher's own log says was changed in an entry after a date: Name, Description, Relationships … */
export function loggedAfter(weakness: Weakness, date: string): ReadonlySet<string> {
  const later = list(weakness.Content_History.Modification).filter(m => m.Modification_Date > date);
  return new Set(later.flatMap(m => (m.Modification_Comment ?? '').replace(/^updated /, '').split(/,\s*/)));
}

function list<T>(many: Many<T>): readonly T[] {
  if (many === undefined) return [];
  return Array.isArray(many) ? many : [many as T];
}
