import { scan } from "./scan";
import { fixedRangeOf, sheetPrefix, type Block } from "./addresses";

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
  const pieces = scan(formula);
  return pieces
    .map((piece, at) => {
      if (piece.kind === "plain")
        return withoutTableName(piece.text, pieces[at + 1]?.kind === "bracket", tables, standing);
      if (piece.kind !== "bracket") return piece.text;
      const before = pieces[at - 1];
      const name = before?.kind === "plain" ? trailingName(before.text) : "";
      const table = name ? tableNamed(name, tables) : tableRound(standing, tables);
      return table ? reference(table, piece.text, standing) : piece.text;
    })
    .join("");
}

/** Takes the table's name off in front of its brackets; a table's name alone is its rows. */
function withoutTableName(plain: string, beforeBracket: boolean, tables: readonly Table[], standing: Standing): string {
  const name = beforeBracket ? trailingName(plain) : "";
  const kept = name && tableNamed(name, tables) ? plain.slice(0, -name.length) : plain;
  return kept.replace(/(?<![\w.!$])[A-Z_\\][\w.]*(?![\w.(!:])/gi, (word) => {
    const table = tableNamed(word, tables);
    return table ? at(table, rowsOf(table), standing) : word;
  });
}

function trailingName(plain: string): string {
  return /[A-Z_\\][\w.]*$/i.exec(plain)?.[0] ?? "";
}

function tableNamed(name: string, tables: readonly Table[]): Table | undefined {
  return tables.find((table) => table.name.toLowerCase() === name.toLowerCase());
}

function tableRound({ sheet, row, column }: Standing, tables: readonly Table[]): Table | undefined {
  return tables.find(
    ({ sheet: home, block }) =>
      home === sheet && row >= block.top && row <= block.bottom && column >= block.left && column <= block.right,
  );
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
  const range = at(table, { ...block, left, right }, standing);
  return block.top === standing.row && block.bottom === standing.row ? freeRows(range) : range;
}

/** A reference to this row moves with the formula when it is copied down: `$A$4` to `$A4`. */
function freeRows(range: string): string {
  return range.replace(/(\$[A-Z]+)\$(\d+)(?=:|$)/g, "$1$2");
}

/** The parts within the brackets, each without its own brackets; a plain `[Dia]` is one part. */
function splitParts(inner: string): string[] {
  const nested = [...inner.matchAll(/\[((?:'.|[^\]])*)\]/g)].map((found) => found[1] ?? "");
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

function at(table: Table, block: Block, standing: Standing): string {
  return `${table.sheet === standing.sheet ? "" : sheetPrefix(table.sheet)}${fixedRangeOf(block)}`;
}
