import { addressOf, blockOf, fixedRangeOf } from "../../../formula/addresses";
import { sheetPrefixOf } from "../address";
import { formulaOf, withoutSheet, type Typed } from "../typed";
import type { Entry } from "../../../catalog/entry";
import type { HeadedBlock } from "./block";
import type { Fitting } from "./fit";
import { isBlankCell } from "./sheet-here";
import { pieceWithUnit } from "./unit-said";

/** What stands for an argument all the way down: a column of the sheet, or what is typed, the same in every row. */
export type Source = Fitting | Typed;

export function isColumn(source: Source): source is Fitting {
  return "column" in source;
}

/** The formula in a row of the block. */
export function formulaIn(
  row: number,
  entry: Entry,
  sources: readonly Source[],
  block: HeadedBlock,
  sheetPrefix: string,
) {
  const parts = sources.map((source): Typed =>
    isColumn(source)
      ? { kind: "expression", piece: pieceWithUnit(referenceTo(source, row, block), source.said) }
      : fixed(withoutSheet([source], sheetPrefix)[0]!),
  );
  return formulaOf(entry.name, parts);
}

/** The formulas below the heading, down to the last row: none in a row where every column it reads is blank. */
export function formulasDown(
  entry: Entry,
  sources: readonly Source[],
  block: HeadedBlock,
  sheetPrefix: string,
): string[] {
  const columns = sources.filter(isColumn).map(({ column }) => column);
  const filled = new Set(block.rows.filter((_, i) => columns.some(({ cells }) => !isBlankCell(cells[i]))));
  const { box, table, headingRow } = block;
  const last = box.bottom - (table?.totals ? 1 : 0);
  return Array.from({ length: last - headingRow }, (_, i) => headingRow + 1 + i).map((row) =>
    table || filled.has(row) ? formulaIn(row, entry, sources, block, sheetPrefix) : "",
  );
}

function referenceTo({ column }: Fitting, row: number, { table, box }: HeadedBlock): string {
  if (!table) return addressOf(row, column.column);
  const name = table.columns[column.column - box.left]!;
  // A name with anything but letters and digits stands in brackets of its own; some signs need an apostrophe there.
  if (/^[\p{L}\p{N}_]+$/u.test(name)) return `[@${name}]`;
  return `[@[${name.replace(/['#[\]@]/g, "'$&")}]]`;
}

/** Typed cells are the same in every row, so they must not move with it. */
function fixed(part: Typed): Typed {
  if (part.kind !== "reference") return part;
  const prefix = sheetPrefixOf(part.piece);
  return { ...part, piece: prefix + fixedRangeOf(blockOf(part.piece.slice(prefix.length).replaceAll("$", ""))) };
}
