import { packedFiles } from './packed.ts';

export type Revision = 3 | 4 | 5;

/** A statement of the CCI list and where it stands in one revision of NIST SP 800-53. */
export interface Statement {
  readonly id: string;
  /** The first of its places, which is the one counted; five statements have two in revision 3, one in revision 4. */
  readonly number: string;
  readonly places: readonly string[];
  readonly title: string;
}

const TITLES = { 3: 'NIST SP 800-53', 4: 'NIST SP 800-53 Revision 4', 5: 'NIST SP 800-53 Revision 5' };
const PATH = 'lib/src/utils/CCI_List.js';

/** The CCI list by revision: @mitre/hdf-converters 2.14.0, `lib/src/utils/CCI_List.js`; undefined out of reach. */
export function readStatements(checks: string): Record<Revision, readonly Statement[]> | undefined {
  const source = packedFiles('@mitre/hdf-converters@2.14.0', path => path === PATH, checks)?.get(PATH);
  if (source === undefined) return undefined;
  const items = [...source.matchAll(/<cci_item id="([^"]+)">(.*?)<\/cci_item>/gs)].map(([, id, body]) => ({
    id: id!,
    title: plain(/<definition>(.*?)<\/definition>/s.exec(body!)![1]!),
    places: [...body!.matchAll(/<reference [^>]*title="([^"]*)"[^>]*index="([^"]*)"/g)],
  }));
  const at = (revision: Revision) =>
    items.flatMap(({ id, title, places }): Statement[] => {
      const there = places.filter(([, title]) => title === TITLES[revision]).map(([, , index]) => plain(index!));
      return there.length > 0 ? [{ id, number: there[0]!, places: there, title }] : [];
    });
  return { 3: at(3), 4: at(4), 5: at(5) };
}

const NAMED: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

function plain(xml: string): string {
  const text = xml.replace(/&(amp|lt|gt|quot|apos);/g, (_, name: string) => NAMED[name]!);
  return text.replace(/\s+/g, ' ').trim();
}

/** The control that an index belongs to: `AC-2 (3) (a)` stands under AC-2 (3). */
export function controlOf(index: string): string {
  return /^[A-Z]{2}-\d+(?: \(\d+\))*/.exec(index)![0];
}
