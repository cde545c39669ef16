import { escapeXml } from '../office/read-xml.ts';
import { columnReference, type PlainSheet, XML_HEAD } from './plain-sheet.ts';

const DRAWING = 'http://schemas.openxmlformats.org/drawingml/2006';
const RELATIONS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/**
 * A bar chart of a sheet's cells, as the program's own chart: it follows the cells and can be restyled. What it shows is
 * held in it as well, since some viewers draw only that.
 */
export function chartXml(sheet: PlainSheet): string {
  const bars = sheet.bars!;
  const rows = sheet.rows.slice(0, bars.rows ?? sheet.rows.length);
  const labels = rows.map(r => String(r[bars.labels] ?? ''));
  const values = rows.map(r => Number(r[bars.values] ?? 0));
  const points = (cells: readonly (string | number)[]) =>
    `<c:ptCount val="${cells.length}"/>${cells.map((c, at) => `<c:pt idx="${at}"><c:v>${escapeXml(String(c))}</c:v></c:pt>`).join('')}`;
  const reference = (column: number) => escapeXml(columnReference(sheet.name, column, rows.length));
  return [
    XML_HEAD,
    `<c:chartSpace xmlns:c="${DRAWING}/chart" xmlns:a="${DRAWING}/main" xmlns:r="${RELATIONS}"><c:chart>`,
    `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz="1200" b="1"/></a:pPr><a:r><a:rPr lang="en" sz="1200" b="1"/><a:t>${escapeXml(bars.title)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`,
    '<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>',
    '<c:barChart><c:barDir val="bar"/><c:grouping val="clustered"/><c:varyColors val="0"/>',
    '<c:ser><c:idx val="0"/><c:order val="0"/><c:spPr><a:solidFill><a:srgbClr val="2F6F8F"/></a:solidFill></c:spPr><c:invertIfNegative val="0"/>',
    '<c:dLbls><c:showLegendKey val="0"/><c:showVal val="1"/><c:showCatName val="0"/><c:showSerName val="0"/><c:showPercent val="0"/><c:showBubbleSize val="0"/></c:dLbls>',
    `<c:cat><c:strRef><c:f>${reference(bars.labels)}</c:f><c:strCache>${points(labels)}</c:strCache></c:strRef></c:cat>`,
    `<c:val><c:numRef><c:f>${reference(bars.values)}</c:f><c:numCache><c:formatCode>General</c:formatCode>${points(values)}</c:numCache></c:numRef></c:val>`,
    '</c:ser><c:gapWidth val="50"/><c:axId val="1"/><c:axId val="2"/></c:barChart>',
    '<c:catAx><c:axId val="1"/><c:scaling><c:orientation val="maxMin"/></c:scaling><c:delete val="0"/><c:axPos val="l"/><c:majorTickMark val="none"/><c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/><c:crossAx val="2"/></c:catAx>',
    '<c:valAx><c:axId val="2"/><c:scaling><c:orientation val="minMax"/><c:min val="0"/></c:scaling><c:delete val="1"/><c:axPos val="t"/><c:numFmt formatCode="General" sourceLinked="1"/><c:majorTickMark val="none"/><c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/><c:crossAx val="1"/></c:valAx>',
    '</c:plotArea><c:plotVisOnly val="1"/></c:chart></c:chartSpace>',
  ].join('');
}

/** The drawing that places the chart to the right of the table. */
export function drawingXml(sheet: PlainSheet, relation: string): string {
  const left = sheet.header.length + 1;
  const bottom = Math.max(8, (sheet.bars?.rows ?? sheet.rows.length) * 2 + 4);
  const corner = (name: string, column: number, row: number) =>
    `<xdr:${name}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${name}>`;
  const title = escapeXml(sheet.bars?.title ?? '');
  return [
    XML_HEAD,
    `<xdr:wsDr xmlns:xdr="${DRAWING}/spreadsheetDrawing" xmlns:a="${DRAWING}/main" xmlns:r="${RELATIONS}" xmlns:c="${DRAWING}/chart">`,
    `<xdr:twoCellAnchor>${corner('from', left, 1)}${corner('to', left + 9, 1 + bottom)}`,
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="2" name="Chart 1" descr="${title}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>`,
    '<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm>',
    `<a:graphic><a:graphicData uri="${DRAWING}/chart"><c:chart r:id="${relation}"/></a:graphicData></a:graphic>`,
    '</xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor></xdr:wsDr>',
  ].join('');
}
