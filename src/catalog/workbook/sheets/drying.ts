import type { Draft } from "../draft";
import { entry, figure } from "../cells";
import { caution, heading, type Page, put, startPage } from "../page";
import { FORMAT, HEADER, SMALL, TEXT, UNIT } from "../style";
import { type Column, drawTable } from "../table";
import { yardRows } from "../yard/read";

const STACK_COLUMNS: readonly Column[] = [
  { header: "Stack", from: "stack" },
  { header: "What", from: "what" },
  { header: "Species", from: "species", list: "Species_list" },
  { header: "Thickness", from: "thickness", format: FORMAT.text, list: "Thickness_list" },
  { header: "Stacked", from: "start", format: FORMAT.date },
  { header: "Board feet", from: "green_bf", format: FORMAT.whole },
  { header: "MC at start", from: "mc_start", format: FORMAT.one },
  {
    header: "Water to lose lb",
    formula: "=BOLE.WATERTOLOSE([@Species], [@[Board feet]], [@[MC at start]], Target_mc)",
    format: FORMAT.whole,
  },
  ...["fast", "typical", "slow"].map((bound) => ({
    header: `Days ${bound}`,
    formula: `=BOLE.AIRDRYDAYS([@Species], [@Thickness], [@[MC at start]], Target_mc, Yard_temperature, Yard_humidity, "${bound}")`,
    format: FORMAT.whole,
  })),
];

const STACK_NAMES = ["D1", "D2", "D3", "D4"];

const READING_COLUMNS: readonly Column[] = [
  { header: "Day", from: "day" },
  ...STACK_NAMES.map((stack) => ({ header: stack, from: stack, format: FORMAT.one })),
  {
    header: "Shown",
    formula: "=INDEX([@[D1]:[D4]], MATCH(Stack_shown, Readings[[#Headers],[D1]:[D4]], 0))",
    format: FORMAT.one,
  },
];

const STACKS_HEADER = 11;
const READINGS_HEADER = 21;
const BOARD_ROW = 29;
const CURVE_HEADER = 41;
const CURVE_POINTS = 27;
const CURVE_STEP_DAYS = 14;

/** The stacks, what the yard's air can do, the readings over the weeks, and when the target is reached. */
export function drawDrying(draft: Draft): void {
  const page = startPage(draft, "Drying", {
    title: "Drying: when is it ready",
    lead: "The air sets how dry wood can get in the yard; your own readings say how fast. The forecast fits the drying curve to the readings of each stack and names the day the target is reached.",
    onePage: true,
    widths: [31, 24, 20, 11, 12, 11, 12, 20, 11, 11, 11, 11],
  });
  const setting = (row: number, label: string, value: string, name: string, more: string, list?: string) => {
    put(page, `A${row}`, label, TEXT);
    entry(page, `B${row}`, value, { name, format: FORMAT.text, list });
    put(page, `C${row}`, more, SMALL);
  };
  setting(4, "Yard temperature", "68 F", "Yard_temperature", "invented: an average over the drying season");
  setting(5, "Yard humidity", "68%", "Yard_humidity", "invented");
  setting(6, "Dry to", "20%", "Target_mc", "air dry; a kiln or a warm room goes on from there");
  put(page, "A7", "What the yard's air dries to, percent", TEXT);
  figure(page, "B7", "=BOLE.EMC(Yard_temperature, Yard_humidity)", { format: FORMAT.one, name: "Yard_emc", key: true });
  put(page, "C7", "equilibrium moisture content =BOLE.EMC(Yard_temperature, Yard_humidity)", SMALL);
  heading(page, 9, "Stacks, and how long tables say they take");
  drawTable(page, `A${STACKS_HEADER}`, "Stacks", STACK_COLUMNS, yardRows("stacks", ["thickness"]));
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
  setting(CURVE_HEADER - 3, "Stack to show in the chart", "D1", "Stack_shown", "D1, D2, D3 or D4", "Stack_list");
  drawCurve(page);
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
    (stack, column) => `=XLOOKUP("${stack}", Stacks[Stack], Stacks[Stacked])+ROUND(${column}${READINGS_HEADER + 3}, 0)`,
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
        array: typed.includes("BOLE"),
      });
    });
    if (name) page.draft.book.definedNames.add(`'Drying'!$I$${row}:$L$${row}`, name);
  });
  page.draft.book.definedNames.add(`'Drying'!$I$${READINGS_HEADER}:$L$${READINGS_HEADER}`, "Stack_list");
  put(page, `H${READINGS_HEADER + 7}`, RATE("D1", 2), SMALL);
}

function drawSampleBoard(page: Page, row: number): void {
  heading(page, row, "A sample board: the weight it must reach", "G");
  const lines: [string, string | number, string, string, string?][] = [
    ["Section cut from it, wet", 412, "g", "Section_wet"],
    ["The same, dried in the oven", 231.5, "g", "Section_dry"],
    ["Its moisture, percent", "=BOLE.MOISTURE(Section_wet, Section_dry)", "percent", "Section_mc", FORMAT.one],
    ["The board itself on that day", 6350, "g", "Board_wet"],
    ["The board bone dry would weigh", "=BOLE.OVENDRYWEIGHT(Board_wet, Section_mc)", "g", "Board_dry", FORMAT.whole],
    [
      "The board at the target weighs",
      "=BOLE.WEIGHTAT(Board_wet, Section_mc, Target_mc)",
      "g",
      "Key_board_weight",
      FORMAT.whole,
    ],
  ];
  lines.forEach(([label, value, unit, name, format], i) => {
    const at = row + 1 + i;
    put(page, `A${at}`, label, TEXT);
    if (typeof value === "number") entry(page, `B${at}`, value, { name });
    else figure(page, `B${at}`, value, { name, format, key: name.startsWith("Key_") });
    put(page, `C${at}`, unit, UNIT);
    put(page, `D${at}`, typeof value === "string" ? value : "invented", SMALL);
  });
}

function drawCurve(page: Page): void {
  const pick = (name: string) => `INDEX(${name}, MATCH(Stack_shown, Stack_list, 0))`;
  const days = Array.from({ length: CURVE_POINTS }, (_, i) => ({ Day: i * CURVE_STEP_DAYS }));
  const columns: Column[] = [
    { header: "Day" },
    {
      header: "Forecast",
      formula: `=Yard_emc+(${pick("Curve_starts")}-Yard_emc)*EXP(-${pick("Rates")}*[@Day])`,
      format: FORMAT.one,
    },
  ];
  const last = drawTable(page, `A${CURVE_HEADER}`, "Curve", columns, days);
  page.draft.charts.push({
    sheet: "Drying",
    title: "Moisture of the stack shown: readings and forecast",
    xTitle: "Days since stacking",
    yTitle: "Moisture, percent",
    from: { column: 3, row: CURVE_HEADER - 2 },
    to: { column: 12, row: last },
    lines: [
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
