const OOXML = 'http://schemas.openxmlformats.org';
const STRICT = 'http://purl.oclc.org/ooxml';

/** The usual prefixes of the namespaces that are read here; each of the first group has a second name in strict files. */
export const NAMESPACES: ReadonlyMap<string, string> = new Map([
  ...(
    [
      ['w', 'wordprocessingml/2006/main', 'wordprocessingml/main'],
      ['a', 'drawingml/2006/main', 'drawingml/main'],
      ['c', 'drawingml/2006/chart', 'drawingml/chart'],
      ['p', 'presentationml/2006/main', 'presentationml/main'],
      ['r', 'officeDocument/2006/relationships', 'officeDocument/relationships'],
      ['x', 'spreadsheetml/2006/main', 'spreadsheetml/main'],
      ['m', 'officeDocument/2006/math', 'officeDocument/math'],
      ['op', 'officeDocument/2006/custom-properties', 'officeDocument/customProperties'],
      ['vt', 'officeDocument/2006/docPropsVTypes', 'officeDocument/docPropsVTypes'],
    ] as const
  ).flatMap(([prefix, usual, strict]): [string, string][] => [
    [`${OOXML}/${usual}`, prefix],
    [`${STRICT}/${strict}`, prefix],
  ]),
  [`${OOXML}/markup-compatibility/2006`, 'mc'],
  [`${OOXML}/package/2006/relationships`, 'rel'],
  [`${OOXML}/package/2006/content-types`, 'ct'],
  [`${OOXML}/package/2006/metadata/core-properties`, 'cp'],
  ['urn:schemas-microsoft-com:vml', 'v'],
  ['http://www.w3.org/XML/1998/namespace', 'xml'],
]);
