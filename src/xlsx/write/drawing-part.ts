import type { Chart } from "./book";
import { CHART_NS, DRAWING_NS, REL_NS } from "./chart-marks";
import { escaped } from "../escaped";
import { HEADING } from "../namespaces";

const PLACE_NS = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";

/** The part that places a sheet's charts, the first as rId1 and so on (ECMA-376 Part 1, 20.5). */
export function drawingPart(charts: readonly Chart[]): string {
  const anchors = charts.map((chart, i) => anchor(chart, i + 1));
  return `${HEADING}<xdr:wsDr xmlns:xdr="${PLACE_NS}" xmlns:a="${DRAWING_NS}">${anchors.join("")}</xdr:wsDr>`;
}

function anchor(chart: Chart, number: number): string {
  const name = escaped(chart.title);
  return (
    `<xdr:twoCellAnchor>${corner("from", chart.from)}${corner("to", chart.to)}` +
    `<xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="${number + 1}" name="${name}" descr="${name}"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr>` +
    `<xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData uri="${CHART_NS}">` +
    `<c:chart xmlns:c="${CHART_NS}" xmlns:r="${REL_NS}" r:id="rId${number}"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>`
  );
}

function corner(tag: "from" | "to", { column, row }: Chart["from"]): string {
  return `<xdr:${tag}><xdr:col>${column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>${row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:${tag}>`;
}
