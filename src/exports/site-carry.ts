import type { PackedWays } from '../crosswalk/packed-ways.ts';
import type { BundleFrame } from './bundle-frame.ts';
import { fileOf, fillTemplate, type Templates } from './fill-template.ts';
import type { Publication } from './publication.ts';
import { scriptJson } from './script-json.ts';

/** The part of the program that carries files, as one script; absent where it was not built. */
export const CARRY_ENGINE = 'carry-engine.js';

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

/** A page that carries a person's own file from an older edition to this one, in the browser alone, with what it needs. */
export function writeCarryPage(
  { joint }: Publication,
  data: PackedWays,
  templates: Templates,
  site: BundleFrame,
): ReadonlyMap<string, string> {
  const { from, to } = joint;
  const page = {
    policy: POLICY,
    stylesheet: 'carry.css',
    from: from.header.name,
    editions: data.ways.map(way => way.from.header.name),
    command: `fishplate carry jobs jobs.csv --from ${from.header.name} --to ${to.header.name} --out jobs-${to.header.name}.csv`,
  };
  return new Map([
    ['carry.html', fillTemplate(templates, 'carry', { site, title: `Carry your file over – ${site.title}`, page })],
    ['carry-data.js', `window.FISHPLATE_CARRY_DATA = ${scriptJson(data)};\n`],
    ...['carry.js', 'carry.css', CARRY_ENGINE].map(name => [name, fileOf(templates, name)] as const),
  ]);
}
