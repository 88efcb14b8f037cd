import { readFileSync } from "node:fs";
import { beforeAll, describe, expect, it } from "vitest";
import { startEngine } from "../../../src/engine/engine";
import { readAnswers } from "../../../src/sheets/sample/answers";
import { blockOf } from "../../../src/formula/addresses";
import { inchesAcross, printableInches } from "../../../src/sheets/paper";
import { readMaterial } from "../../../src/sheets/sample/material";
import { drawSample } from "../../../src/sheets/sample/sample";
import type { Cell, Sheet } from "../../../src/xlsx/write/book";
import { SAMPLE } from "./parts";

/** Points: smaller type cannot be read in the hand. */
const LEAST_TYPE = 8;
const USUAL_TYPE = 11;
const USUAL_ROW = 15;
const POINTS_PER_INCH = 72;

let sheets: Sheet[];
beforeAll(async () => {
  const engine = await startEngine();
  const shown = await engine.open(readFileSync(SAMPLE));
  engine.stop();
  const blank = drawSample(readMaterial(), new Map());
  const answers = readAnswers(blank, (sheet, address) => shown.value(sheet, address));
  ({ sheets } = drawSample(readMaterial(), answers).book);
});

/** What goes onto paper of a sheet: the block of cells that hold something, or its print area. */
function printed({ cells, charts, print }: Sheet) {
  const held = [...cells.values()].filter(({ content }) => content !== null);
  return (
    print.area ?? {
      top: 0,
      left: 0,
      bottom: Math.max(...held.map(({ row }) => row), ...charts.map(({ to }) => to.row)),
      right: Math.max(...held.map(({ column }) => column), ...charts.map(({ to }) => to.column - 1)),
    }
  );
}

/** The columns of each page across: those between breaks, with the ones that are printed again. */
function pagesAcross(sheet: Sheet): { left: number; right: number; inches: number }[] {
  const { left, right } = printed(sheet);
  const firsts = [left, ...(sheet.print.columnBreaks ?? [])];
  return firsts.map((first, i) => {
    const last = (firsts[i + 1] ?? right + 1) - 1;
    const again = sheet.print.repeatedColumns;
    const repeats = again && first > again.last ? inchesAcross(sheet.widths, again.first, again.last) : 0;
    return { left: first, right: last, inches: inchesAcross(sheet.widths, first, last) + repeats };
  });
}

function inchesDown(sheet: Sheet): number {
  const { top, bottom } = printed(sheet);
  let points = 0;
  for (let row = top; row <= bottom; row++) points += sheet.heights.get(row) ?? USUAL_ROW;
  return points / POINTS_PER_INCH;
}

/** How large a sheet is printed: as it says, or as it fits. */
function scaleOf(sheet: Sheet): number {
  const { print } = sheet;
  if (print.scale) return print.scale / 100;
  const room = printableInches(print);
  const across = room.width / Math.max(...pagesAcross(sheet).map(({ inches }) => inches));
  return Math.min(1, across, print.onePage ? room.height / inchesDown(sheet) : 1);
}

const typeOf = ({ style }: Cell) => style.font?.size ?? USUAL_TYPE;

describe("the sheets of the sample on paper", () => {
  it("have type of at least 8 points on every page, on letter and on A4", () => {
    const small = sheets.flatMap((sheet) => {
      const { top, bottom } = printed(sheet);
      return pagesAcross(sheet).flatMap(({ left, right }) => {
        const own = [...sheet.cells.values()].filter(
          ({ row, column, content }) =>
            content !== null && row >= top && row <= bottom && column >= left && column <= right,
        );
        const least = Math.min(...own.map(typeOf)) * scaleOf(sheet);
        return least < LEAST_TYPE ? [`${sheet.name}, columns ${left} to ${right}: ${least.toFixed(1)} points`] : [];
      });
    });
    expect(sheets.length).toBeGreaterThan(28);
    expect(small).toEqual([]);
  });

  it("go onto pages no wider than the paper", () => {
    const cut = sheets.flatMap((sheet) =>
      pagesAcross(sheet)
        .filter(({ inches }) => inches * scaleOf(sheet) > printableInches(sheet.print).width + 1e-9)
        .map(({ left, right }) => `${sheet.name}, columns ${left} to ${right}`),
    );
    expect(cut).toEqual([]);
  });

  it("run no text across the edge of a page", () => {
    const cut = sheets.flatMap(({ name, merges, print }) =>
      merges
        .filter((range) => {
          const { left, right } = blockOf(range);
          return (print.columnBreaks ?? []).some((start) => left < start && start <= right);
        })
        .map((range) => `${name}!${range}`),
    );
    expect(cut).toEqual([]);
  });

  it("print the headings of a long table on every page, in one row", () => {
    const long = sheets.filter(
      ({ tables, print }) => !print.onePage && tables.some(({ block }) => block.bottom - block.top > 30),
    );
    expect(long.length).toBeGreaterThan(2);
    for (const { name, tables, print } of long) {
      expect(print.repeated, name).toEqual({ first: tables[0]!.block.top, last: tables[0]!.block.top });
    }
  });
});
