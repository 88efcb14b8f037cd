import { addChart, type Draft } from "../../draft";
import { figure } from "../../drawing/cells";
import { drawFacts } from "../../drawing/facts";
import { caution, heading, type Page, put, startPage } from "../../drawing/page";
import { drawStatus } from "../../drawing/status";
import { HEADER, SMALL, TEXT } from "../../drawing/style";
import { FORMAT } from "../../../formats";
import type { Column } from "../../../definition";
import { drawTable } from "../../drawing/table";
import { yardRows } from "../../yard/read";
import { lookUp } from "../../look-up";
import { KILN, SAMPLE_BOARD, SETTINGS } from "./drying-facts";

const STACK_COLUMNS: readonly Column[] = [
  { heading: "Stack" },
  { heading: "What" },
  { heading: "Species", list: "species" },
  { heading: "Thickness", format: FORMAT.text, list: "thicknesses" },
  { heading: "Stacked", format: FORMAT.date },
  {
    heading: "Board feet",
    formula: "=SUMIFS(Results[Sawn bf], Results[Stack], [@Stack])",
    format: FORMAT.whole,
  },
  { heading: "MC at start", format: FORMAT.one },
  {
    heading: "Last reading",
    formula: "=INDEX(Readings[[D1]:[D4]], ROWS(Readings[Day]), MATCH([@Stack], Readings[[#Headers],[D1]:[D4]], 0))",
    format: FORMAT.one,
  },
  {
    heading: "Water to lose lb",
    formula: "=BOLE.WATERTOLOSE([@Species], [@[Board feet]], [@[MC at start]], Target_mc)",
    format: FORMAT.whole,
  },
  ...["fast", "typical", "slow"].map((bound) => ({
    heading: `Days ${bound}`,
    formula: `=BOLE.AIRDRYDAYS([@Species], [@Thickness], [@[MC at start]], Target_mc, Yard_temperature, Yard_humidity, "${bound}")`,
    format: FORMAT.whole,
  })),
];

const STACK_NAMES = ["D1", "D2", "D3", "D4"];

const READING_COLUMNS: readonly Column[] = [
  { heading: "Day" },
  ...STACK_NAMES.map((stack) => ({ heading: stack, format: FORMAT.one })),
  {
    heading: "Shown",
    formula: "=INDEX([@[D1]:[D4]], MATCH(Stack_shown, Readings[[#Headers],[D1]:[D4]], 0))",
    format: FORMAT.one,
  },
];

const FACT_COLUMNS = { label: "A", value: "B", says: "C" };
const STACKS_HEADER = 11;
const READINGS_HEADER = 21;
const BOARD_ROW = 29;
const CURVE_HEADER = 45;
const CURVE_POINTS = 27;
const CURVE_STEP_DAYS = 14;

/** The stacks, what the yard's air can do, the readings over the weeks, and when the target is reached. */
export function drawDrying(draft: Draft): void {
  const page = startPage(draft, "Drying", {
    title: "Drying: when is it ready",
    lead: "The air sets how dry wood can get in the yard; your own readings say how fast. The forecast fits the drying curve to the readings of each stack and names the day the target is reached.",
    pages: { startAt: [7] },
    widths: [33, 24, 20, 11, 12, 11, 12, 20, 14, 13, 13, 13],
  });
  drawStatus(page, "E1");
  drawFacts(page, FACT_COLUMNS, 4, SETTINGS);
  heading(page, 9, "Stacks, and how long tables say they take");
  drawTable(page, `A${STACKS_HEADER}`, "Stacks", STACK_COLUMNS, yardRows("stacks", ["Thickness"]));
  caution(
    page,
    17,
    "days from tables are from memory and a range, not a promise: wood, weather and stacking decide. Pin meters do not read true above about 25 to 30 %: weigh sample boards until then. A stack may fall: level base, no higher than three times its width.",
    2,
  );
  heading(page, 19, "Readings, moisture percent, and what they forecast");
  drawTable(page, `A${READINGS_HEADER}`, "Readings", READING_COLUMNS, yardRows("readings"));
  drawForecasts(page);
  drawSampleBoard(page, BOARD_ROW);
  drawKiln(page, BOARD_ROW);
  drawFacts(page, FACT_COLUMNS, CURVE_HEADER - 3, [
    {
      label: "Stack to show in the chart",
      value: "D1",
      name: "Stack_shown",
      list: "Stack_list",
      says: "D1, D2, D3 or D4",
    },
  ]);
  drawCurve(page);
  page.sheet.print.rowBreaks = [BOARD_ROW - 1, CURVE_HEADER - 4];
}

const RATE = (stack: string, row: number) =>
  `=INDEX(BOLE.DRYRATE(Readings[Day], Readings[${stack}], Yard_emc), ${row}, 2)`;
const DAY = (stack: string, row: number) =>
  `=INDEX(BOLE.DRYFORECAST(Readings[Day], Readings[${stack}], Yard_emc, Target_mc), ${row}, 2)`;

/** Rows of the forecast block: label, formula for a stack, format, and the row's name where another cell needs it. */
const FORECAST_ROWS: readonly [string, (stack: string, column: string) => string, string, string?][] = [
  ["Share lost a day", (stack) => RATE(stack, 2), FORMAT.four, "Rates"],
  ["Start by the curve", (stack) => RATE(stack, 3), FORMAT.one, "Curve_starts"],
  ["Target on day", (stack) => DAY(stack, 2), FORMAT.whole],
  ["At the earliest", (stack) => DAY(stack, 3), FORMAT.whole],
  ["At the latest", (stack) => DAY(stack, 4), FORMAT.whole],
  [
    "Target on",
    (stack, column) =>
      `=${lookUp(`"${stack}"`, "Stacks[Stack]", "Stacks[Stacked]")}+ROUND(${column}${READINGS_HEADER + 3}, 0)`,
    FORMAT.date,
  ],
];

function drawForecasts(page: Page): void {
  put(page, `H${READINGS_HEADER - 1}`, "DRYRATE DRYFORECAST", SMALL);
  ["Forecast", ...STACK_NAMES].forEach((text, i) => put(page, `${"HIJKL"[i]}${READINGS_HEADER}`, text, HEADER));
  FORECAST_ROWS.forEach(([label, formula, format, name], r) => {
    const row = READINGS_HEADER + 1 + r;
    put(page, `H${row}`, label, TEXT);
    STACK_NAMES.forEach((stack, i) => {
      const column = "IJKL"[i]!;
      const typed = formula(stack, column);
      const key = r === 2 && stack === "D1";
      figure(page, `${column}${row}`, typed, {
        format,
        key,
        name: key ? "Key_dry_day" : undefined,
      });
    });
    if (name) page.draft.book.names.push({ name: name, refersTo: `'Drying'!$I$${row}:$L$${row}` });
  });
  page.draft.book.names.push({ name: "Stack_list", refersTo: `'Drying'!$I$${READINGS_HEADER}:$L$${READINGS_HEADER}` });
  put(page, `H${READINGS_HEADER + 7}`, RATE("D1", 2), SMALL);
}

function drawSampleBoard(page: Page, row: number): void {
  heading(page, row, "A sample board: the weight it must reach", "F");
  drawFacts(page, FACT_COLUMNS, row + 1, SAMPLE_BOARD);
}

function drawKiln(page: Page, row: number): void {
  heading(page, row, "The kiln: what its run cost", "L", "H");
  drawFacts(page, { label: "H", value: "J", says: "K" }, row + 1, KILN);
}

function drawCurve(page: Page): void {
  const pick = (name: string) => `INDEX(${name}, MATCH(Stack_shown, Stack_list, 0))`;
  const days = Array.from({ length: CURVE_POINTS }, (_, i) => ({ Day: i * CURVE_STEP_DAYS }));
  const columns: Column[] = [
    { heading: "Day" },
    {
      heading: "Forecast",
      formula: `=Yard_emc+(${pick("Curve_starts")}-Yard_emc)*EXP(-${pick("Rates")}*[@Day])`,
      format: FORMAT.one,
    },
  ];
  const last = drawTable(page, `A${CURVE_HEADER}`, "Curve", columns, days);
  addChart(page.draft, {
    kind: "scatter",
    sheet: "Drying",
    title: "Moisture of the stack shown: readings and forecast",
    xTitle: "Days since stacking",
    yTitle: "Moisture, percent",
    from: { column: 3, row: CURVE_HEADER - 2 },
    to: { column: 7, row: last },
    series: [
      {
        name: "Readings",
        x: `A${READINGS_HEADER + 1}:A${READINGS_HEADER + 5}`,
        y: `F${READINGS_HEADER + 1}:F${READINGS_HEADER + 5}`,
        look: "dots",
      },
      { name: "Forecast", x: `A${CURVE_HEADER + 1}:A${last}`, y: `B${CURVE_HEADER + 1}:B${last}`, look: "line" },
    ],
  });
}
