import type { Chart, ChartLine } from "./draft";
import { XML_HEAD, xmlText } from "./xml";

/* A scatter chart as its two parts: the drawing that places it on the sheet, and the chart itself (ECMA-376 Part 1, 20.5 and 21.2). */

const CHART_NS = "http://schemas.openxmlformats.org/drawingml/2006/chart";
const DRAWING_NS = "http://schemas.openxmlformats.org/drawingml/2006/main";
const PLACE_NS = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
const REL_NS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** Dots are dark squares, lines are brown: told apart without colour. */
const LINE_COLOUR = "8C5A2B";
const DOT_COLOUR = "22303A";
/** Points of a drawing are 12,700 of its units. */
const EMU_PER_POINT = 12700;

/** Numbers of a range as the sheet shows them; undefined where a cell holds none. */
export type NumbersOf = (range: string) => (number | undefined)[];

export function drawingXml(chart: Chart): string {
  const corner = (tag: string, at: Chart["from"]) =>
    `<xdr:${tag}><xdr:col>${at.column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${at.row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${tag}>`;
  return (
    XML_HEAD +
    `<xdr:wsDr xmlns:xdr="${PLACE_NS}" xmlns:a="${DRAWING_NS}"><xdr:twoCellAnchor>` +
    corner("from", chart.from) +
    corner("to", chart.to) +
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="2" name="${xmlText(chart.title)}" descr="${xmlText(chart.title)}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>` +
    `<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData uri="${CHART_NS}">` +
    `<c:chart xmlns:c="${CHART_NS}" xmlns:r="${REL_NS}" r:id="rId1"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor></xdr:wsDr>`
  );
}

export function chartXml(chart: Chart, numbersOf: NumbersOf): string {
  return (
    XML_HEAD +
    `<c:chartSpace xmlns:c="${CHART_NS}" xmlns:a="${DRAWING_NS}" xmlns:r="${REL_NS}"><c:roundedCorners val="0"/><c:chart>` +
    title(chart.title, 1300) +
    `<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/><c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>` +
    chart.lines.map((line, i) => seriesXml(chart, line, i, numbersOf)).join("") +
    `<c:axId val="1001"/><c:axId val="1002"/></c:scatterChart>` +
    axis(1001, 1002, "b", chart.xTitle) +
    axis(1002, 1001, "l", chart.yTitle) +
    `</c:plotArea><c:legend><c:legendPos val="b"/><c:overlay val="0"/></c:legend><c:plotVisOnly val="1"/><c:dispBlanksAs val="gap"/></c:chart></c:chartSpace>`
  );
}

function seriesXml(chart: Chart, line: ChartLine, index: number, numbersOf: NumbersOf): string {
  const look =
    line.look === "dots"
      ? `<c:spPr><a:ln w="${EMU_PER_POINT}"><a:noFill/></a:ln></c:spPr><c:marker><c:symbol val="square"/><c:size val="8"/><c:spPr><a:solidFill><a:srgbClr val="${DOT_COLOUR}"/></a:solidFill></c:spPr></c:marker>`
      : `<c:spPr><a:ln w="${2 * EMU_PER_POINT}"><a:solidFill><a:srgbClr val="${LINE_COLOUR}"/></a:solidFill></a:ln></c:spPr><c:marker><c:symbol val="none"/></c:marker>`;
  return (
    `<c:ser><c:idx val="${index}"/><c:order val="${index}"/><c:tx><c:v>${xmlText(line.name)}</c:v></c:tx>${look}` +
    `<c:xVal>${numbers(chart.sheet, line.x, numbersOf)}</c:xVal><c:yVal>${numbers(chart.sheet, line.y, numbersOf)}</c:yVal><c:smooth val="0"/></c:ser>`
  );
}

function numbers(sheet: string, range: string, numbersOf: NumbersOf): string {
  const points = numbersOf(range);
  const kept = points.map((value, i) => (value === undefined ? "" : `<c:pt idx="${i}"><c:v>${value}</c:v></c:pt>`));
  const fixed = range.replace(/([A-Z]+)(\d+)/g, "$$$1$$$2");
  return `<c:numRef><c:f>'${sheet}'!${fixed}</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="${points.length}"/>${kept.join("")}</c:numCache></c:numRef>`;
}

function title(text: string, size: number): string {
  return `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz="${size}" b="1"/></a:pPr><a:r><a:rPr lang="en-US" sz="${size}" b="1"/><a:t>${xmlText(text)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`;
}

function axis(id: number, crosses: number, side: "b" | "l", text: string): string {
  return (
    `<c:valAx><c:axId val="${id}"/><c:scaling><c:orientation val="minMax"/><c:min val="0"/></c:scaling><c:delete val="0"/><c:axPos val="${side}"/>` +
    `<c:majorGridlines><c:spPr><a:ln w="6350"><a:solidFill><a:srgbClr val="D5DADD"/></a:solidFill></a:ln></c:spPr></c:majorGridlines>` +
    title(text, 1000) +
    `<c:numFmt formatCode="General" sourceLinked="0"/><c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="nextTo"/><c:crossAx val="${crosses}"/><c:crosses val="autoZero"/></c:valAx>`
  );
}
