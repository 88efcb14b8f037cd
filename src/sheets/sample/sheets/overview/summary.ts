import type { BarChart } from "../../../../xlsx/write/book";
import { addChart, type Draft, type Placed } from "../../draft";
import { entry, figure } from "../../drawing/cells";
import { heading, link, type Page, put, startPage } from "../../drawing/page";
import { drawStatus } from "../../drawing/status";
import { HEADER, SMALL, TEXT, UNIT } from "../../drawing/style";
import { DOLLARS, FORMAT } from "../../../formats";
import { KEY_FIGURES } from "./key-figures";
import { STORY_ROWS } from "./log-to-sale";
import { lookUp } from "../../look-up";
import { FIRST_ROW, LAST_ROWS, SUMMARY_TABLES } from "./summary-tables";

const KEYS_ROW = 4;
const MONTH_ROW = KEYS_ROW + KEY_FIGURES.length + 3;

/** The yard on one page: key figures, one month, and charts of money, wood and stock. */
export function drawSummary(draft: Draft): void {
  const page = startPage(draft, "Summary", {
    title: "Summary: the yard on one page",
    lead: "Figures of the other sheets and charts of them; the tables behind the charts stand on the sheet Summary tables. Choose the month in the tinted cell.",
    widths: [40, 14, 10, 15, 3, ...Array.from({ length: 12 }, () => 9.5)],
    landscape: false,
    pages: { startAt: [5], namesRows: false },
  });
  drawStatus(page, "F1");
  drawKeyFigures(page);
  drawMonth(page);
  put(page, "F2", "Four charts stand here; the try-out page draws none.", SMALL);
  for (const chart of placed(CHARTS)) addChart(draft, chart);
}

function drawKeyFigures(page: Page): void {
  heading(page, KEYS_ROW, "Key figures", "D");
  ["Figure", "", "Unit", "Sheet"].forEach((text, i) => put(page, `${"ABCD"[i]}${KEYS_ROW + 1}`, text, HEADER));
  KEY_FIGURES.forEach(({ label, name, unit, format, sheet }, i) => {
    const row = KEYS_ROW + 2 + i;
    put(page, `A${row}`, label, TEXT);
    figure(page, `B${row}`, `=${name}`, { format, key: true });
    put(page, `C${row}`, unit, UNIT);
    link(page, `D${row}`, sheet);
  });
}

function drawMonth(page: Page): void {
  heading(page, MONTH_ROW, "One month", "D");
  put(page, `A${MONTH_ROW + 1}`, "Month, by its first day", TEXT);
  // The month in which logs come in while the first are sawn.
  const march = new Date(Date.UTC(2026, 2, 1));
  entry(page, `B${MONTH_ROW + 1}`, march, { format: FORMAT.date, name: "Month_shown", list: "Month_list" });
  const columns = [
    ["Logs that came in", "Logs in", FORMAT.whole, "logs"],
    ["Paid for them", "Paid for logs", DOLLARS.cents, ""],
    ["Scaled in them", "Scaled bf", FORMAT.whole, "bf"],
    ["Sawn", "Sawn bf", FORMAT.whole, "bf"],
    ["Sold from stock", "Sold bf", FORMAT.whole, "bf"],
    ["Billed, before tax", "Billed", DOLLARS.cents, ""],
  ] as const;
  columns.forEach(([label, column, format, unit], i) => {
    const row = MONTH_ROW + 2 + i;
    put(page, `A${row}`, label, TEXT);
    figure(page, `B${row}`, `=${lookUp("Month_shown", "Months[Month]", `Months[${column}]`)}`, { format });
    put(page, `C${row}`, unit, UNIT);
  });
  put(page, `A${MONTH_ROW + 8}`, "a minus under Paid: the owners paid us to take their logs", SMALL);
}

const tableRange = (column: string, table: keyof typeof LAST_ROWS) =>
  `${column}${FIRST_ROW}:${column}${LAST_ROWS[table]}`;
const storyRange = (column: string) => `${column}${STORY_ROWS.first}:${column}${STORY_ROWS.last}`;

type Bars = Pick<BarChart, "title" | "yTitle" | "names" | "series" | "data" | "stacked">;

const CHARTS: readonly Bars[] = [
  {
    title: "Money by log: cost so far and billed",
    yTitle: "Dollars",
    data: "Log to sale",
    names: storyRange("A"),
    series: [
      { name: "Cost so far", values: storyRange("R") },
      { name: "Billed", values: storyRange("S") },
    ],
  },
  {
    title: "Board feet by species: in the logs and sawn",
    yTitle: "Board feet",
    data: SUMMARY_TABLES,
    names: tableRange("J", "species"),
    series: [
      { name: "Scaled in the logs", values: tableRange("K", "species") },
      { name: "Sawn so far", values: tableRange("L", "species") },
    ],
  },
  {
    title: "Stock: sold and left",
    yTitle: "Board feet",
    data: SUMMARY_TABLES,
    stacked: true,
    names: tableRange("N", "stock"),
    series: [
      { name: "Sold", values: tableRange("Q", "stock") },
      { name: "Left", values: tableRange("R", "stock") },
    ],
  },
  {
    title: "Month by month: scaled, sawn, sold",
    yTitle: "Board feet",
    data: SUMMARY_TABLES,
    names: tableRange("B", "months"),
    series: [
      { name: "Scaled", values: tableRange("E", "months") },
      { name: "Sawn", values: tableRange("F", "months") },
      { name: "Sold", values: tableRange("G", "months") },
    ],
  },
];

const CHART_COLUMNS = 6;
const CHART_ROWS = 18;

/** Two charts in a row, two rows, to the right of the figures. */
function placed(charts: readonly Bars[]): Placed<BarChart>[] {
  return charts.map((chart, i) => {
    const column = 5 + (i % 2) * CHART_COLUMNS;
    const row = KEYS_ROW - 1 + Math.floor(i / 2) * CHART_ROWS;
    const place = { from: { column, row }, to: { column: column + CHART_COLUMNS, row: row + CHART_ROWS } };
    return { kind: "bars", sheet: "Summary", xTitle: "", ...place, ...chart };
  });
}
