import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../../../src/engine/engine";
import { answerDirectly } from "../../../../src/hosts/terminal/file/direct";
import { answerInEngine } from "../../../../src/hosts/terminal/file/in-engine";
import { readCalculating } from "../../../../src/hosts/terminal/file/workbook";
import { openPackage } from "../../../../src/xlsx/package";
import { AT } from "./sharing";
import { tiny } from "./tiny";

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine();
});
afterAll(() => engine.stop());

/** What people and programs leave in cells: numbers, sizes as text, blanks, truth values, errors. */
const CELLS = [
  ...["<v>20</v>", "<v>0</v>", "<v>-3.5</v>", "<v>1e300</v>"].map((held) => ["", held]),
  ...["5/4", "8'6&quot;", "Doyle", "red oak", "", "12%"].map((text) => [' t="str"', `<v>${text}</v>`]),
  [' t="b"', "<v>1</v>"],
  [' t="e"', "<v>#N/A</v>"],
  ["", ""],
];
const ARGUMENTS = [
  "A1",
  "A$2",
  "$A$3",
  "A1:A3",
  "Logs!A2:B3",
  "12",
  "-4",
  '"Doyle"',
  '"5/4"',
  "TRUE",
  "",
  "{1,2;3,4}",
  "(A2)",
];
const FUNCTIONS = ["LOGSCALE", "BOARDFEET", "EMC", "TALLY", "SHRINKAGE", "CUTWIDTH", "VERSION", "MEASURE", "LOGWEIGHT"];

describe("a call that is answered without the engine", () => {
  it("answers as the engine does, to the last sign of its message", async () => {
    const cell = fc.constantFrom(...CELLS);
    const call = fc
      .tuple(fc.constantFrom(...FUNCTIONS), fc.array(fc.constantFrom(...ARGUMENTS), { maxLength: 5 }))
      .map(([name, given]) => `BOLE.${name}(${given.join(", ")})`);
    await fc.assert(
      fc.asyncProperty(
        fc.array(cell, { minLength: 6, maxLength: 6 }),
        fc.array(call, { minLength: 20, maxLength: 20 }),
        async (cells, calls) => {
          const grid = cells.map(
            ([type, held], at) => [`${"AB"[at % 2]}${Math.floor(at / 2) + 1}`, type, held] as const,
          );
          const rows = [1, 2, 3].map((row) => {
            const own = grid.filter(([address]) => address.endsWith(String(row)));
            return `<row r="${row}">${own.map(([address, type, held]) => `<c r="${address}"${type}>${held}</c>`).join("")}</row>`;
          });
          const asked = calls.map(
            (one, at) =>
              `<row r="${(at + 1) * 50}"><c r="D${(at + 1) * 50}"><f>${one.replace(/"/g, "&quot;")}</f></c></row>`,
          );
          const workbook = readCalculating(
            openPackage(await tiny({ sheets: { Logs: [...rows, ...asked].join("") } }), AT),
            AT,
          );
          const formulas = workbook.sheets[0]!.formulas;
          const texts = new Map(formulas.map((formula) => [formula, formula.forEngine]));
          const direct = answerDirectly(workbook, formulas, new Set(), texts);
          const inEngine = await answerInEngine(workbook, texts, new Map(), new Set(), engine);
          expect(direct.size).toBe(calls.length);
          for (const formula of formulas)
            expect([formula.forEngine, direct.get(formula)]).toEqual([formula.forEngine, inEngine.get(formula)]);
        },
      ),
      { seed: 21, numRuns: 15 },
    );
  });
});
