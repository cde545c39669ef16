import { openZip } from '../office/open-zip.ts';
import { escapeXml } from '../office/read-xml.ts';
import { writeZip } from '../office/write-zip.ts';

const CORE = 'docProps/core.xml';

/**
 * An office file without what differs from run to run: its libraries write the clock into the properties of the document
 * and into every entry of the zip.
 *
 * @param day day of publication, year-month-day; absent: no day is told
 */
export function fixedPackage(bytes: Uint8Array, title: string, publisher: string, day: string | undefined): Uint8Array {
  const parts = new Map(openZip(bytes, title));
  const at = (what: string) =>
    day ? `<dcterms:${what} xsi:type="dcterms:W3CDTF">${escapeXml(day)}T00:00:00Z</dcterms:${what}>` : '';
  const core = `<?xml version="1.0" encoding="UTF-8" standalone="yes"?><cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"><dc:title>${escapeXml(title)}</dc:title><dc:creator>${escapeXml(publisher)}</dc:creator>${at('created')}${at('modified')}</cp:coreProperties>`;
  parts.set(CORE, new TextEncoder().encode(core));
  return writeZip(parts);
}
