import type { Worksheet } from "exceljs";
import type { Chart, Draft } from "../draft";
import type { ValuesOf } from "./chart-marks";
import { chartPart } from "./chart-part";
import { drawingPart } from "./drawing-part";
import { addPart, addRelation, edit, type Parts, placeBefore, RELATION } from "./parts";

const DRAWING_TYPE = "application/vnd.openxmlformats-officedocument.drawing+xml";
const CHART_TYPE = "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";

/** Adds the draft's charts: one drawing a sheet, one part a chart. */
export function addCharts(parts: Parts, draft: Draft): void {
  const sheets = [...new Set(draft.charts.map(({ sheet }) => sheet))];
  sheets.forEach((sheet, i) => {
    const charts = draft.charts.filter((chart) => chart.sheet === sheet);
    addDrawing(parts, draft, sheet, charts, `xl/drawings/drawing${i + 1}.xml`);
  });
}

function addDrawing(parts: Parts, draft: Draft, sheet: string, charts: readonly Chart[], path: string): void {
  const at = draft.book.worksheets.findIndex(({ name }) => name === sheet);
  const sheetPath = `xl/worksheets/sheet${at + 1}.xml`;
  addRelation(parts, sheetPath, "rIdCharts", `${RELATION}/drawing`, path.replace("xl/", "../"));
  edit(parts, sheetPath, (xml) => placeBefore(xml, "<drawing ", `<drawing r:id="rIdCharts"/>`));
  addPart(parts, path, DRAWING_TYPE, drawingPart(charts));
  charts.forEach((chart, i) => {
    const chartPath = `xl/charts/chart${draft.charts.indexOf(chart) + 1}.xml`;
    const data = chart.data ?? chart.sheet;
    const valuesOf = valuesOn(draft.book.getWorksheet(data)!);
    addRelation(parts, path, `rId${i + 1}`, `${RELATION}/chart`, chartPath.replace("xl/", "../"));
    addPart(parts, chartPath, CHART_TYPE, chartPart(chart, { sheet: data, valuesOf }));
  });
}

function valuesOn(sheet: Worksheet): ValuesOf {
  return (range) => {
    const [first, last] = range.split(":").map((address) => sheet.getCell(address));
    const rows = Array.from({ length: Number(last!.row) - Number(first!.row) + 1 }, (_, i) => Number(first!.row) + i);
    return rows.map((row) => {
      const cell = sheet.getCell(row, Number(first!.col));
      const value = cell.result ?? cell.value;
      return typeof value === "number" || typeof value === "string" ? value : undefined;
    });
  };
}
