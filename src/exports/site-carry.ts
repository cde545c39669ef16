import type { PackedWays } from '../crosswalk/packed-ways.ts';
import type { BundleFrame } from './bundle-frame.ts';
import { fileOf, fillTemplate, type Templates } from './fill-template.ts';
import type { Publication } from './publication.ts';
import { scriptJson } from './script-json.ts';

/** The part of the program that carries files, as one script; absent where it was not built. */
export const CARRY_ENGINE = 'carry-engine.js';
/** The scripts of the page itself, in the order in which they run, after the engine and the editions. */
export const CARRY_SCRIPTS = ['carry-worker.js', 'carry-rows.js', 'carry-cases.js', 'carry.js'] as const;

/**
 * Nothing may be loaded but what lies beside the page, and nothing may be sent anywhere. `file:` is for browsers in
 * which a page from a folder is of no origin, so that 'self' is nothing; the worker is made of the page's own script.
 */
const POLICY = [
  "default-src 'none'",
  "script-src 'self' file:",
  "style-src 'self' file:",
  "img-src 'self' file: data:",
  'worker-src blob:',
  "connect-src 'none'",
  "form-action 'self' file:",
  "base-uri 'none'",
].join('; ');

/** What the page itself says, wherever it stands: in a published site or in the viewer. */
export interface CarryPage {
  readonly edition: string;
  /** The edition that is chosen at first. */
  readonly from: string;
  readonly editions: readonly string[];
  /** Where the numbers of older editions can be looked up without a script. */
  readonly older: readonly { readonly edition: string; readonly href: string }[];
  readonly command: string;
  readonly scripts: readonly string[];
}

/** @param data what is carried to and from; `from` is among its ways */
export function carryPage(
  { to, ways }: PackedWays,
  from: string,
  older: CarryPage['older'],
  scripts: readonly string[],
): CarryPage {
  const edition = to.header.name;
  return {
    edition,
    from,
    editions: ways.map(way => way.from.header.name),
    older,
    command: `fishplate carry jobs jobs.csv --from ${from} --to ${edition} --out jobs-${edition}.csv`,
    scripts,
  };
}

/** The packed ways as a script: a page from a folder may not fetch. */
export function carryDataScript(data: PackedWays): string {
  return `window.FISHPLATE_CARRY_DATA = ${scriptJson(data)};\n`;
}

/** A page that carries a person's own file from an older edition to this one, in the browser alone, with what it needs. */
export function writeCarryPage(
  { joint }: Publication,
  data: PackedWays,
  templates: Templates,
  site: BundleFrame,
): ReadonlyMap<string, string> {
  const older = site.older.map(({ edition, file }) => ({ edition, href: file }));
  const carry = carryPage(data, joint.from.header.name, older, ['carry-data.js', CARRY_ENGINE, ...CARRY_SCRIPTS]);
  const page = { policy: POLICY, stylesheet: 'carry.css', carry };
  return new Map([
    ['carry.html', fillTemplate(templates, 'carry', { site, title: `Carry your file over – ${site.title}`, page })],
    ['carry-data.js', carryDataScript(data)],
    ...[...CARRY_SCRIPTS, 'carry.css', CARRY_ENGINE].map(name => [name, fileOf(templates, name)] as const),
  ]);
}
