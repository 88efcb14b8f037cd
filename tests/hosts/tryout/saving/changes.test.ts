import { describe, expect, it } from "vitest";
import { changesSince, typedIn } from "../../../../src/hosts/tryout/saving/changes";
import { asOpened, type CellContents, type GridContents } from "../../../../src/hosts/tryout/saving/contents";

const FREE = new Set(["free"]);

function grid(
  sheets: Record<string, CellContents[]>,
  more: Partial<GridContents["sheets"][number]> = {},
): GridContents {
  return {
    names: {},
    sheets: Object.entries(sheets).map(([id, cells]) => ({
      ...{ id, name: `Sheet ${id}`, cells, looks: "", hidden: false },
      frame: { widths: {}, heights: {}, merges: [], frozen: { rows: 0, columns: 0 } },
      ...more,
    })),
  };
}

const at = (row: number, column: number, value: CellContents["value"], more: Partial<CellContents> = {}) => ({
  ...{ row, column, value },
  ...more,
});

describe("what was typed since a workbook was opened", () => {
  const before = grid({
    s0: [at(0, 0, 20), at(1, 0, "oak"), at(0, 1, 40, { formula: "=A1*2" }), at(0, 2, 1, { format: "0.00" })],
  });

  it("is nothing where nothing changed", () => {
    expect(changesSince(before, structuredClone(before), FREE)).toEqual({ cells: [], added: [], left: [] });
  });

  it("is the typed value and the answers that followed, the emptied cell and the new formula", () => {
    const now = grid({
      s0: [
        at(0, 0, 21),
        at(0, 1, 42, { formula: "=A1*2" }),
        at(0, 2, 1, { format: "0.00" }),
        at(3, 0, 5, { formula: "=B1+1" }),
      ],
    });
    expect(changesSince(before, now, FREE).cells).toEqual([
      {
        sheet: "Sheet s0",
        cells: [
          { row: 0, column: 0, value: 21 },
          { row: 0, column: 1, value: 42, answered: true },
          { row: 3, column: 0, value: 5, formula: "=B1+1" },
          { row: 1, column: 0, value: null },
        ],
      },
    ]);
  });

  it("keeps how a day is shown, and takes a format back", () => {
    const now = grid({
      s0: [at(0, 0, 46_085, { format: "yyyy-mm-dd" }), ...before.sheets[0]!.cells.slice(1, 3), at(0, 2, 1)],
    });
    expect(changesSince(before, now, FREE).cells[0]!.cells).toEqual([
      { row: 0, column: 0, value: 46_085, format: "yyyy-mm-dd" },
      { row: 0, column: 2, value: 1, format: "General" },
    ]);
  });

  it("counts an answer that came out otherwise as nothing typed, and a moved spill neither", () => {
    const moving = (value: number) =>
      grid({ s0: [at(0, 0, value, { formula: "=NOW()" }), at(1, 0, value, { spilled: true })] });
    expect(typedIn(changesSince(moving(1), moving(2), FREE))).toBe(typedIn(changesSince(moving(1), moving(1), FREE)));
    expect(typedIn(changesSince(before, grid({ s0: [] }), FREE))).not.toBe(typedIn(changesSince(before, before, FREE)));
  });

  it("adds the page's free sheet where it holds something, and every sheet that the file does not have", () => {
    const opened = grid({ s0: [], free: [] });
    const now = grid({ s0: [], free: [at(0, 0, 1)], ready: [at(0, 0, "Log book")], blank: [] });
    const { added, left } = changesSince(opened, now, FREE);
    expect(added.map(({ id }) => id)).toEqual(["free", "ready"]);
    expect(left).toEqual(["the sheet Sheet blank, which is empty"]);
  });

  it("says what is seen in the page and does not reach the file", () => {
    const now = grid({ s0: before.sheets[0]!.cells }, { looks: "0 0 bold", hidden: true });
    expect(changesSince(before, now, FREE).left).toEqual([
      "on the sheet Sheet s0 colours, fonts and borders that were changed",
      "on the sheet Sheet s0 that the sheet was hidden or shown",
    ]);
  });
});

describe("a workbook as it was opened", () => {
  it("has the answers of its calculation, and nothing that was typed while it calculated", () => {
    const first = grid({ s0: [at(0, 0, 20), at(0, 1, 0, { formula: "=A1*2" })] });
    const later = grid({
      s0: [at(0, 0, 99), at(0, 1, 40, { formula: "=A1*2" }), at(5, 5, "hasty"), at(1, 1, 7, { spilled: true })],
    });
    expect(asOpened(first, later).sheets[0]!.cells).toEqual([
      at(0, 0, 20),
      at(0, 1, 40, { formula: "=A1*2" }),
      at(1, 1, 7, { spilled: true }),
    ]);
  });
});
