import { type Entry, type Example, TOPICS } from "../../../../catalog/entry";
import { callOf } from "../../../../catalog/reference/function-page";
import type { Draft } from "../../draft";
import { figure, spill } from "../../drawing/cells";
import { columnLetters } from "../../../../formula/addresses";
import { freeze, type Page, printOnly, put, repeatRows, startPage, setHeight, setLook } from "../../drawing/page";
import { CAUTION, HEADER, HEADING, LINK, PROSE, SMALL, SMALL_PROSE, TEXT } from "../../drawing/style";

const WIDTHS = [19, 37, 34, 39, 20, 14, 14, 38, 38];
const HEADINGS = [
  "Function",
  "What it answers",
  "How to call it",
  "Example",
  "Answer here",
  "Should be",
  "Grade",
  "Source",
  "Caution",
];
const HEADER_ROW = 4;
const TABLES_SHEET = "Function tables";

/** Every function with an example that runs in the sheet. Answers that spill stand on a sheet of their own. */
export function drawFunctions(draft: Draft, catalog: readonly Entry[]): void {
  const page = startPage(draft, "Functions", {
    title: "Functions: all of them, each with a live example",
    lead: 'Copy an example into your own sheet and put your cells in place of the numbers. Grade says how far to trust the number: published (a standard, a handbook, a law), plain arithmetic, common practice, or from memory. =BOLE.SOURCE("LOGSCALE") prints the formula and its source.',
    pages: { startAt: [6] },
    widths: WIDTHS,
  });
  HEADINGS.forEach((text, i) => put(page, `${"ABCDEFGHI"[i]}${HEADER_ROW}`, text, HEADER));
  freeze(page, HEADER_ROW, 1);
  repeatRows(page, HEADER_ROW, HEADER_ROW);
  let row = HEADER_ROW + 1;
  const places = placesOfTables(catalog);
  for (const [topic, title] of Object.entries(TOPICS)) {
    WIDTHS.forEach((_, i) => setLook(page, `${columnLetters(i)}${row}`, HEADING));
    put(page, `A${row}`, title, HEADING);
    setHeight(page, row++, 20);
    for (const entry of catalog.filter((one) => one.topic === topic))
      drawFunction(page, row++, entry, places.get(entry.name));
  }
  printOnly(page, `A${HEADER_ROW}:I${row - 1}`);
}

function drawFunction(page: Page, row: number, entry: Entry, place: string | undefined): void {
  const [example] = entry.examples;
  const texts = {
    B: entry.summary,
    C: callOf(entry),
    D: example?.formula ?? "",
    F: example?.result.startsWith("{") ? "the table there" : (example?.result ?? ""),
    G: entry.grade,
    H: sourcesOf(entry),
    I: entry.cautions.join(" "),
  };
  put(page, `A${row}`, entry.name, { ...TEXT, font: { ...TEXT.font, bold: true } });
  for (const [column, text] of Object.entries(texts))
    put(page, `${column}${row}`, text, column === "B" ? PROSE : SMALL_PROSE);
  if (texts.I) setLook(page, `I${row}`, { ...CAUTION, font: { ...CAUTION.font, size: 10, bold: false } });
  if (place) put(page, `E${row}`, { text: "spills: see there", leadsTo: TABLES_SHEET, cell: place }, LINK);
  else if (example) figure(page, `E${row}`, example.formula, { format: formatLike(example.result) });
  const heights = Object.entries(texts).map(([column, text]) => {
    const lines = Math.ceil(text.length / (WIDTHS["ABCDEFGHI".indexOf(column)]! * (column === "B" ? 0.95 : 0.95)));
    return lines * (column === "B" ? 15.5 : 13.5);
  });
  setHeight(page, row, Math.max(16, ...heights) + 1);
}

const SOURCES_SHOWN = 2;

function sourcesOf({ name, formulas }: Entry): string {
  const all = [...new Set(formulas.flatMap((formula) => formula.sources))];
  const more = all.length - SOURCES_SHOWN;
  const shown = all.slice(0, SOURCES_SHOWN).join("; ");
  return more > 0 ? `${shown}; ${more} more: =BOLE.SOURCE("${name}")` : shown;
}

/** As many decimals as the catalog prints. */
function formatLike(result: string): string | undefined {
  const decimals = /^-?\d+(?:\.(\d+))?$/.exec(result);
  if (!decimals) return undefined;
  return decimals[1] ? `0.${"0".repeat(decimals[1].length)}` : "0";
}

const FIRST_TABLE_ROW = 5;

/** The examples whose answer is a table, each spilling under its formula. */
export function drawFunctionTables(draft: Draft, catalog: readonly Entry[]): void {
  const page = startPage(draft, TABLES_SHEET, {
    title: "Function tables: answers that spill",
    lead: "Each of these functions answers a whole table. Type it into one cell and leave room below and beside it.",
    pages: { startAt: [6] },
    widths: [26, 24, 24, 22, 22, 24, 22, 16, 12, 48],
  });
  const places = placesOfTables(catalog);
  for (const entry of catalog) {
    const place = places.get(entry.name);
    const example = entry.examples[0];
    if (!place || !example) continue;
    const row = Number(place.slice(1));
    put(page, `A${row}`, entry.name, HEADING);
    put(page, `B${row}`, entry.summary, SMALL);
    put(page, `A${row + 1}`, example.formula, SMALL);
    spill(page, `A${row + 2}`, example.formula, [], HEADER);
  }
}

/** Where each spilling example's title stands, with room for its table below it. */
function placesOfTables(catalog: readonly Entry[]): Map<string, string> {
  const places = new Map<string, string>();
  let row = FIRST_TABLE_ROW;
  for (const { name, examples } of catalog) {
    const rows = examples[0] ? rowsOf(examples[0]) : 1;
    if (rows === 1) continue;
    places.set(name, `A${row}`);
    row += rows + 4;
  }
  return places;
}

/** How many rows an example's answer fills, by what the catalog says of it. */
function rowsOf({ result }: Example): number {
  const counted = /^a table of (\d+) rows\b/.exec(result)?.[1];
  return counted ? Number(counted) : result.startsWith("{") ? result.split(";").length : 1;
}
