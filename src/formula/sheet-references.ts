import { cellAddress, fixedAddress, type Cell } from "./cell-address";

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
const SAME_ROW = /\[@(?:\[([^\]]+)\]|([^\]]+))\]/g;
const WHOLE_COLUMN = /\bTable\[([^[\]]+)\]/g;
const WHOLE_COLUMNS = /\bTable\[\[([^\]]+)\]:\[([^\]]+)\]\]/g;

/** A formula of a definition as it goes into a cell in a row. */
export function formulaInCell(formula: string, places: Places, style: ReferenceStyle, row: number): string {
  const valuesNamed = formula.replace(LABEL, (_, nameOf: string | undefined, label: string) => {
    const { row, column } = found(places.values, label);
    return fixedAddress({ row, column: nameOf ? column - 1 : column });
  });
  if (style === "table") return valuesNamed.replace(/\bTable\[/g, `${places.table}[`);
  const block = (from: string, to: string) => {
    const top = fixedAddress({ row: places.firstRow, column: found(places.columns, from) });
    return `${top}:${fixedAddress({ row: places.lastRow, column: found(places.columns, to) })}`;
  };
  return valuesNamed
    .replace(WHOLE_COLUMNS, (_, from: string, to: string) => block(from, to))
    .replace(WHOLE_COLUMN, (_, heading: string) => block(heading, heading))
    .replace(SAME_ROW, (_, spaced: string | undefined, plain: string | undefined) =>
      cellAddress({ row, column: found(places.columns, spaced ?? plain ?? "") }),
    );
}

function found<Place>(places: ReadonlyMap<string, Place>, name: string): Place {
  const place = places.get(name);
  if (place === undefined) throw new Error(`A ready sheet's formula names "${name}", which the sheet does not have`);
  return place;
}
