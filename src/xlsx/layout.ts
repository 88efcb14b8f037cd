import { blockOf, LAST_COLUMN, type Block } from "../formula/addresses";
import { isOn, type SheetPart } from "./parts";
import { Refused } from "./refused";
import { attribute, elements } from "./xml";

/** How a sheet is laid out: its sizes, merged cells and panes. Rows and columns count from 0. */
export interface Layout {
  /** One past the last row and column of which the file says anything. */
  rows: number;
  columns: number;
  /** By column, in characters. */
  widths: ReadonlyMap<number, { characters?: number; hidden: boolean }>;
  /** By row, in points. */
  heights: ReadonlyMap<number, { points?: number; hidden: boolean }>;
  merges: readonly Block[];
  frozen: { rows: number; columns: number };
  gridlines: boolean;
  tab?: string;
}

/** A person merges headings, not sheets: a few letters of a file can name billions of cells. */
const MOST_MERGED_CELLS = 200_000;

/** A column that says how wide all columns to the edge of the sheet are has nothing in it. */
const WIDEST_NAMED = 1000;

export function layoutOf({ xml: { xml, rows, data }, part }: SheetPart): Layout {
  // Sizes stand before the rows, merged cells behind them; the rows themselves are read already.
  const [before, after] = [`${xml.slice(0, data.start)}</worksheet>`, xml.slice(data.end)];
  const heights = new Map(
    rows.map(({ row, attributes }) => {
      const height = attribute(attributes, "ht");
      return [row, { ...(height ? { points: Number(height) } : {}), hidden: isOn(attribute(attributes, "hidden")) }];
    }),
  );
  const widths = widthsIn(before);
  const lastCell = rows.reduce((most, { cells }) => cells.reduce((m, { column }) => Math.max(m, column), most), -1);
  const merges = mergesIn(after, part);
  return {
    rows: (rows.at(-1)?.row ?? -1) + 1,
    columns: Math.max(lastCell, ...[...widths.keys()].filter((column) => column < WIDEST_NAMED)) + 1,
    ...{ widths, heights, merges, frozen: frozenIn(before) },
    gridlines: !elements(before, "sheetView").some(({ attributes }) => attribute(attributes, "showGridLines") === "0"),
    ...tabIn(before),
  };
}

function widthsIn(xml: string): Map<number, { characters?: number; hidden: boolean }> {
  const widths = new Map<number, { characters?: number; hidden: boolean }>();
  for (const { attributes } of elements(xml, "col")) {
    const [from, to] = [Number(attribute(attributes, "min")), Number(attribute(attributes, "max"))];
    if (!(to <= LAST_COLUMN + 1)) throw new Refused(`it names column ${to}; a sheet has ${LAST_COLUMN + 1}`);
    const width = attribute(attributes, "width");
    const known = { ...(width ? { characters: Number(width) } : {}), hidden: isOn(attribute(attributes, "hidden")) };
    for (let column = from; column <= to; column++) widths.set(column - 1, known);
  }
  return widths;
}

/** The merged cells of a sheet. */
export function mergesOf({ xml: { xml, data }, part }: SheetPart): Block[] {
  return mergesIn(xml.slice(data.end), part);
}

function mergesIn(xml: string, part: string): Block[] {
  const found = [...xml.matchAll(/<(?:[\w.-]+:)?mergeCell\s[^<>]*>/g)];
  const merges = found.map(([tag]) => blockOf(attribute(tag.slice(tag.indexOf(" ")), "ref") ?? "A1"));
  const cells = merges.reduce((sum, { top, left, bottom, right }) => sum + (bottom - top + 1) * (right - left + 1), 0);
  if (cells > MOST_MERGED_CELLS)
    throw new Refused(`its part ${part} merges ${cells} cells; the limit is ${MOST_MERGED_CELLS}`);
  return merges;
}

function frozenIn(xml: string): Layout["frozen"] {
  const pane = elements(xml, "pane")[0]?.attributes ?? "";
  if (!/^frozen/.test(attribute(pane, "state") ?? "")) return { rows: 0, columns: 0 };
  return { rows: Number(attribute(pane, "ySplit") ?? 0), columns: Number(attribute(pane, "xSplit") ?? 0) };
}

function tabIn(xml: string): { tab?: string } {
  const tab = elements(xml, "tabColor")[0];
  const color = tab && attribute(tab.attributes, "rgb");
  return color ? { tab: color.slice(-6) } : {};
}
