import { gridOf, sizeOf, widestRow } from "../cell";
import { Unreadable } from "../error";
import { changed, isBlank, type Argument, type Declaration, type Declarations, type Take } from "./argument";
import { boundParts } from "./parts";

/**
 * For a figure that goes with the whole of a list, such as the thickness of a tally. A column of figures beside a column
 * of the list looks as if it went row by row, while every answer would be one of the whole list: it is refused.
 */
export function forWholeList<T>(declaration: Declaration<T>, ...lists: string[]): Declaration<T> {
  return changed(declaration, {}, (argument, take) => {
    const list = lists.find((name) => !isOneCell(gridOf(take(name))));
    if (list === undefined || isOneCell(argument.cells)) return argument;
    const read = (): never => {
      throw new Unreadable(argument.name, `one cell, for the whole of ${list}`, sizeOf(argument.cells));
    };
    return { ...argument, cells: [[null]], needed: null, isBlank: () => false, read };
  });
}

/** Cells that make one thing together, such as the diameter and length of a log: all of them are given, or none. */
export function together<R extends object>(parts: Declarations<R>): Declaration<R> {
  const bind = (take: Take): Argument<R> => {
    const fields = boundParts(parts, take);
    const noneGiven = () => fields.every(({ argument }) => argument.cells.flat().every(isBlank));
    const read = () => Object.fromEntries(fields.map(({ key, argument }) => [key, onlyValue(argument)])) as R;
    const name = fields.map(({ argument }) => argument.name).join(" and ");
    const whenBlank = (): never => {
      throw new Unreadable(name, "a value each", "blanks");
    };
    return { name, cells: [[null]], needed: "number", isBlank: noneGiven, whenBlank, read };
  };
  return { facts: { kind: "together", optional: false }, parts, bind };
}

/** All the ranges of a call from here on, handed on as they are. Excel calls such an argument repeating. */
export const repeated: Declaration<readonly unknown[]> = {
  facts: { kind: "as the function says", optional: true, many: "repeated" },
  bind: (take, name) => ({
    name,
    cells: [[take(name)]],
    needed: null,
    isBlank: () => false,
    whenBlank: () => [],
    read: (ranges) => (Array.isArray(ranges) ? (ranges as unknown[]) : []),
  }),
};

function onlyValue(argument: Argument<unknown>): unknown {
  if (!isOneCell(argument.cells)) throw new Unreadable(argument.name, "one cell", sizeOf(argument.cells));
  const cell = argument.cells[0]![0];
  return argument.isBlank(cell) ? argument.whenBlank(cell, argument.name) : argument.read(cell, argument.name);
}

function isOneCell(cells: readonly (readonly unknown[])[]): boolean {
  return cells.length === 1 && widestRow(cells) === 1;
}
