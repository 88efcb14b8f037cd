import { columnLetters, fixedRangeOf, isWithin, sheetPrefix, type Block } from "./addresses";
import { rewritten } from "./tokens";

/** A table of the workbook: its columns in order and the block it covers, headings and totals included. */
export interface Table {
  name: string;
  sheet: string;
  columns: string[];
  block: Block;
  headings: boolean;
  totals: boolean;
}

/** Where a formula stands: `[@Dia]` means this row of the table round it. */
export interface Standing {
  sheet: string;
  row: number;
  column: number;
}

/** The engine knows no tables: `Logs[BF]`, `Logs[[#This Row],[Dia]]` and `[@Dia]` become ranges. */
export function expandTables(formula: string, tables: readonly Table[], standing: Standing): string {
  if (tables.length === 0) return formula;
  return rewritten(formula, ({ kind, text }, at, all) => {
    const before = all[at - 1];
    if (kind === "bracket") {
      const table = before?.kind === "name" ? tableNamed(before.text, tables) : tableRound(standing, tables);
      return table ? reference(table, text, standing) : text;
    }
    const table = kind === "name" && before?.kind !== "sheet" ? tableNamed(text, tables) : undefined;
    if (!table) return text;
    // In front of brackets the name goes with them; alone it is the table's rows.
    return all[at + 1]?.kind === "bracket" ? "" : rangeIn(table, rowsOf(table), standing);
  });
}

function tableNamed(name: string, tables: readonly Table[]): Table | undefined {
  return tables.find((table) => table.name.toLowerCase() === name.toLowerCase());
}

function tableRound({ sheet, row, column }: Standing, tables: readonly Table[]): Table | undefined {
  return tables.find((table) => table.sheet === sheet && isWithin({ row, column }, table.block));
}

/** `[BF]`, `[@Dia]`, `[[#This Row],[Dia]]`, `[[#Headers],[A]:[B]]`, `[#All]`, `[]` to a range. */
function reference(table: Table, brackets: string, standing: Standing): string {
  const inner = brackets.slice(1, -1).trim();
  const thisRow = inner.startsWith("@");
  const parts = splitParts(thisRow ? inner.slice(1) : inner);
  const areas = parts.filter((part) => part.startsWith("#")).map((part) => part.toLowerCase());
  const columns = parts.filter((part) => !part.startsWith("#") && part !== "").map((part) => columnAt(table, part));
  if (columns.includes(-1)) return "#REF!";
  const block = areaOf(table, thisRow ? ["#this row"] : areas, standing);
  const left = table.block.left + (columns.length ? Math.min(...columns) : 0);
  const right = columns.length ? table.block.left + Math.max(...columns) : table.block.right;
  return rangeIn(table, { ...block, left, right }, standing);
}

/** The parts within the brackets, each without its own brackets; a plain `[Dia]` is one part. */
function splitParts(inner: string): string[] {
  const nested = [...inner.matchAll(/\[((?:'.|[^\]'])*)\]/g)].map((found) => found[1] ?? "");
  const parts = inner.startsWith("[") ? nested : [inner];
  return parts.map((part) => part.trim().replace(/'(.)/g, "$1"));
}

function columnAt(table: Table, name: string): number {
  return table.columns.findIndex((column) => column.toLowerCase() === name.toLowerCase());
}

function rowsOf({ block, headings, totals }: Table): Block {
  return { ...block, top: block.top + (headings ? 1 : 0), bottom: block.bottom - (totals ? 1 : 0) };
}

function areaOf(table: Table, areas: string[], standing: Standing): Block {
  const { block } = table;
  const rows = rowsOf(table);
  if (areas.includes("#this row")) return { ...block, top: standing.row, bottom: standing.row };
  if (areas.includes("#all")) return block;
  const headers = areas.includes("#headers");
  const totals = areas.includes("#totals");
  const data = areas.includes("#data") || (!headers && !totals);
  const top = headers ? block.top : data ? rows.top : block.bottom;
  const bottom = totals ? block.bottom : data ? rows.bottom : block.top;
  return { ...block, top, bottom };
}

function rangeIn(table: Table, block: Block, standing: Standing): string {
  const prefix = table.sheet === standing.sheet ? "" : sheetPrefix(table.sheet);
  const thisRow = block.top === standing.row && block.bottom === standing.row;
  return prefix + (thisRow ? withinRow(block) : fixedRangeOf(block));
}

/** A reference to this row moves with the formula when it is copied down: `$A4:$C4`. */
function withinRow({ top, left, right }: Block): string {
  const [from, to] = [left, right].map((column) => `$${columnLetters(column)}${top + 1}`);
  return from === to ? from! : `${from}:${to}`;
}
