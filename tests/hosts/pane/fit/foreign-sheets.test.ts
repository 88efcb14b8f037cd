import { describe, expect, it } from "vitest";
import catalog from "../../../../src/catalog/catalog.json";
import type { Entry } from "../../../../src/catalog/entry";
import { headedBlock, type HeadedBlock } from "../../../../src/hosts/pane/fit/block";
import { formulaIn, type Source } from "../../../../src/hosts/pane/fit/column-formula";
import { fitted } from "../../../../src/hosts/pane/fit/fit";
import { FOREIGN_SHEETS, type ForeignSheet } from "./foreign-sheets";
import { PUT_ASIDE } from "./foreign-sheets-put-aside";
import { sheetOf } from "./sheet-of";

const entryOf = (name: string): Entry => (catalog as Entry[]).find((one) => one.name === name)!;

function blockOn({ cells, chosen, from }: ForeignSheet): HeadedBlock {
  const block = headedBlock(sheetOf(cells, chosen, from ? { from } : {}));
  if (!block || "lacks" in block) throw new Error(`No headed block round ${chosen}: ${block?.lacks}`);
  return block;
}

/** The formula that a person gets who corrects nothing. */
function firstFormula(sheet: ForeignSheet, name: string): string {
  const entry = entryOf(name);
  const block = blockOn(sheet);
  const found = fitted(entry, block);
  const sources = entry.params.map((param): Source => {
    const one = found.find((fit) => fit.param === param);
    return one?.found ?? { kind: "nothing", piece: "" };
  });
  return formulaIn(block.rows[0]!, entry, sources, block, "'Mine'!");
}

describe.each([
  ["those that the words were written for", FOREIGN_SHEETS, 24],
  ["those put aside, of which 6 fitted when they were first asked", PUT_ASIDE, 10],
])("sheets that nobody here made, %s", (_, sheets, fitted) => {
  it("fit without a correction", () => {
    const whole = sheets.filter((sheet) =>
      Object.entries(sheet.fits).every(([name, formula]) => firstFormula(sheet, name) === formula),
    );
    expect(`${whole.length} of ${sheets.length}`).toBe(`${fitted} of ${fitted}`);
  });

  const cases = sheets.flatMap((sheet) =>
    Object.entries(sheet.fits).map(([name, formula]) => ({ sheet, about: sheet.about, name, formula })),
  );

  it.each(cases)("$about: $name fits as $formula", ({ sheet, name, formula }) => {
    expect(firstFormula(sheet, name)).toBe(formula);
  });

  it.each(sheets)("$about: only its filled rows are rows", (sheet) => {
    const { rows } = blockOn(sheet);
    expect(rows.map((row) => row + 1)).toEqual(spelled(sheet.rows));
  });
});

/** `2-3, 5` as 2, 3, 5. */
function spelled(rows: string): number[] {
  return rows.split(", ").flatMap((piece) => {
    const [from = 0, to = from] = piece.split("-").map(Number);
    return Array.from({ length: to - from + 1 }, (_, i) => from + i);
  });
}
