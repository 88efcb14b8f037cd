import { addressOf, fixedAddressOf, type Cell } from "./addresses";
import { rewritten } from "./tokens";

/** Where the parts of a sheet came to stand. */
export interface Places {
  table: string;
  /** Columns of the table by their heading. */
  columns: ReadonlyMap<string, number>;
  firstRow: number;
  lastRow: number;
  /** Cells with the values of settings and figures, by their label; each label stands to the left. */
  values: ReadonlyMap<string, Cell>;
}

/** How a formula names the cells of its table: as Excel does, or by plain addresses where a program knows no tables. */
export type ReferenceStyle = "table" | "cells";

const LABEL = /\{(name of )?([^{}"]+)\}/g;
/** What a definition calls its own table. */
const TABLE = "Table";

/** A formula of a definition as it goes into a cell in a row. Rows and columns of places count from 1, as on the sheet. */
export function formulaInCell(formula: string, places: Places, style: ReferenceStyle, row: number): string {
  const valuesNamed = formula.replace(LABEL, (_, nameOf: string | undefined, label: string) => {
    const { row, column } = found(places.values, label);
    return fixedAddressOf(row - 1, column - (nameOf ? 2 : 1));
  });
  return rewritten(valuesNamed, ({ kind, text }, at, all) => {
    const isTable = kind === "name" && text === TABLE && all[at + 1]?.kind === "bracket";
    if (style === "table") return isTable ? places.table : text;
    if (isTable) return "";
    return kind === "bracket" ? cellsOf(text, places, row) : text;
  });
}

/** `[@Dia]` is the column's cell in this row, `[@[A]:[B]]` several; `[Dia]` and `[[A]:[B]]` are whole columns. */
function cellsOf(brackets: string, { columns, firstRow, lastRow }: Places, row: number): string {
  const headings = brackets
    .replace(/^\[@?|\]$/g, "")
    .split("]:[")
    .map((heading) => heading.replace(/[[\]]/g, ""));
  const [from, to] = [headings[0]!, headings.at(-1)!].map((heading) => found(columns, heading) - 1);
  if (brackets.startsWith("[@"))
    return [...new Set([from!, to!])].map((column) => addressOf(row - 1, column)).join(":");
  return `${fixedAddressOf(firstRow - 1, from!)}:${fixedAddressOf(lastRow - 1, to!)}`;
}

function found<Place>(places: ReadonlyMap<string, Place>, name: string): Place {
  const place = places.get(name);
  if (place === undefined) throw new Error(`A ready sheet's formula names "${name}", which the sheet does not have`);
  return place;
}
