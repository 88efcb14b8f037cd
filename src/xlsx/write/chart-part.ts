import type { BarChart, Chart, ScatterChart } from "./book";
import {
  BROWN,
  CHART_NS,
  type ChartData,
  DRAWING_NS,
  EMU_PER_POINT,
  fill,
  INK,
  line,
  nameAxis,
  names,
  numberAxis,
  numbers,
  REL_NS,
  STRAW,
  title,
} from "./chart-marks";
import { escaped } from "../escaped";
import { HEADING } from "../namespaces";

/** Dark, pale, brown, each with a dark edge: told apart in black and white. */
const BAR_COLOURS = [INK, STRAW, BROWN];
/** Two bars side by side leave this share of a bar's width between groups. */
const GAP_PERCENT = 60;

/** The part that holds a chart. */
export function chartPart(chart: Chart, data: ChartData): string {
  return (
    HEADING +
    `<c:chartSpace xmlns:c="${CHART_NS}" xmlns:a="${DRAWING_NS}" xmlns:r="${REL_NS}"><c:roundedCorners val="0"/><c:chart>` +
    title(chart.title, 1300) +
    `<c:autoTitleDeleted val="0"/><c:plotArea><c:layout/>${chart.kind === "bars" ? bars(chart, data) : scatter(chart, data)}</c:plotArea>` +
    `<c:legend><c:legendPos val="b"/><c:overlay val="0"/></c:legend><c:plotVisOnly val="1"/><c:dispBlanksAs val="gap"/></c:chart></c:chartSpace>`
  );
}

function scatter(chart: ScatterChart, data: ChartData): string {
  const series = chart.series.map(
    ({ name, x, y, look }, i) =>
      `<c:ser>${seriesHead(name, i)}${look === "dots" ? DOTS : LINE}<c:xVal>${numbers(x, data)}</c:xVal><c:yVal>${numbers(y, data)}</c:yVal><c:smooth val="0"/></c:ser>`,
  );
  const fromZero = `<c:min val="0"/>`;
  return (
    `<c:scatterChart><c:scatterStyle val="lineMarker"/><c:varyColors val="0"/>${series.join("")}<c:axId val="1001"/><c:axId val="1002"/></c:scatterChart>` +
    numberAxis({ id: 1001, crosses: 1002, side: "b", text: chart.xTitle }, fromZero) +
    numberAxis({ id: 1002, crosses: 1001, side: "l", text: chart.yTitle }, fromZero)
  );
}

const DOTS = `<c:spPr><a:ln w="${EMU_PER_POINT}"><a:noFill/></a:ln></c:spPr><c:marker><c:symbol val="square"/><c:size val="8"/><c:spPr>${fill(INK)}</c:spPr></c:marker>`;
const LINE = `<c:spPr>${line(2, BROWN)}</c:spPr><c:marker><c:symbol val="none"/></c:marker>`;

function bars(chart: BarChart, data: ChartData): string {
  const series = chart.series.map(
    ({ name, values }, i) =>
      `<c:ser>${seriesHead(name, i)}<c:spPr>${fill(BAR_COLOURS[i % BAR_COLOURS.length]!)}${line(1, INK)}</c:spPr><c:invertIfNegative val="0"/><c:cat>${names(chart.names, data)}</c:cat><c:val>${numbers(values, data)}</c:val></c:ser>`,
  );
  const [grouping, overlap] = chart.stacked ? ["stacked", `<c:overlap val="100"/>`] : ["clustered", ""];
  return (
    `<c:barChart><c:barDir val="col"/><c:grouping val="${grouping}"/><c:varyColors val="0"/>${series.join("")}<c:gapWidth val="${GAP_PERCENT}"/>${overlap}<c:axId val="1001"/><c:axId val="1002"/></c:barChart>` +
    nameAxis({ id: 1001, crosses: 1002, side: "b", text: chart.xTitle }) +
    numberAxis({ id: 1002, crosses: 1001, side: "l", text: chart.yTitle })
  );
}

function seriesHead(name: string, index: number): string {
  return `<c:idx val="${index}"/><c:order val="${index}"/><c:tx><c:v>${escaped(name)}</c:v></c:tx>`;
}
