import { blockOf, fixedRangeOf, sheetPrefix } from "../../formula/addresses";
import { escaped } from "../escaped";

/* What every kind of chart is built from (ECMA-376 Part 1, 21.2). */

export const CHART_NS = "http://schemas.openxmlformats.org/drawingml/2006/chart";
export const DRAWING_NS = "http://schemas.openxmlformats.org/drawingml/2006/main";
export const REL_NS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** Lengths of a drawing are counted in 12,700ths of a point. */
export const EMU_PER_POINT = 12700;
export const INK = "22303A";
export const BROWN = "8C5A2B";
export const STRAW = "F0DFA8";

/** What the cells of a range hold, from the top down; undefined where a cell is blank. */
export type ValuesOf = (range: string) => (number | string | undefined)[];

/** Where a chart finds its values. */
export interface ChartData {
  sheet: string;
  valuesOf: ValuesOf;
}

/** A range of numbers, with those it holds now. */
export function numbers(range: string, { sheet, valuesOf }: ChartData): string {
  const held = valuesOf(range).map((value) => (typeof value === "number" ? value : undefined));
  return `<c:numRef><c:f>${fixed(sheet, range)}</c:f><c:numCache><c:formatCode>General</c:formatCode>${points(held)}</c:numCache></c:numRef>`;
}

/** A range of names, with those it holds now. */
export function names(range: string, { sheet, valuesOf }: ChartData): string {
  return `<c:strRef><c:f>${fixed(sheet, range)}</c:f><c:strCache>${points(valuesOf(range))}</c:strCache></c:strRef>`;
}

function points(held: (number | string | undefined)[]): string {
  const kept = held.map((value, i) =>
    value === undefined ? "" : `<c:pt idx="${i}"><c:v>${escaped(String(value))}</c:v></c:pt>`,
  );
  return `<c:ptCount val="${held.length}"/>${kept.join("")}`;
}

function fixed(sheet: string, range: string): string {
  return sheetPrefix(sheet) + fixedRangeOf(blockOf(range));
}

export function title(text: string, size: number): string {
  return `<c:title><c:tx><c:rich><a:bodyPr/><a:p><a:pPr><a:defRPr sz="${size}" b="1"/></a:pPr><a:r><a:rPr lang="en-US" sz="${size}" b="1"/><a:t>${escaped(text)}</a:t></a:r></a:p></c:rich></c:tx><c:overlay val="0"/></c:title>`;
}

export function fill(colour: string): string {
  return `<a:solidFill><a:srgbClr val="${colour}"/></a:solidFill>`;
}

export function line(points: number, colour: string): string {
  return `<a:ln w="${points * EMU_PER_POINT}">${fill(colour)}</a:ln>`;
}

interface Axis {
  id: number;
  crosses: number;
  side: "b" | "l";
  text: string;
}

/** An axis of numbers with lines across the chart; it takes in 0. */
export function numberAxis(axis: Axis, least = ""): string {
  return (
    `<c:valAx><c:axId val="${axis.id}"/><c:scaling><c:orientation val="minMax"/>${least}</c:scaling><c:delete val="0"/><c:axPos val="${axis.side}"/>` +
    `<c:majorGridlines><c:spPr>${line(0.5, "D5DADD")}</c:spPr></c:majorGridlines>` +
    axisEnd(axis, `<c:numFmt formatCode="#,##0" sourceLinked="0"/>`, "nextTo") +
    `</c:valAx>`
  );
}

/** An axis of names. They stand at the foot of the chart, below bars that go under 0. */
export function nameAxis(axis: Axis): string {
  return (
    `<c:catAx><c:axId val="${axis.id}"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="${axis.side}"/>` +
    axisEnd(axis, "", "low") +
    `</c:catAx>`
  );
}

function axisEnd({ crosses, text }: Axis, format: string, labels: "nextTo" | "low"): string {
  return (
    (text && title(text, 1000)) +
    `${format}<c:majorTickMark val="out"/><c:minorTickMark val="none"/><c:tickLblPos val="${labels}"/><c:crossAx val="${crosses}"/><c:crosses val="autoZero"/>`
  );
}
