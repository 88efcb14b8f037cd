import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../../../src/engine/engine";
import { shared } from "../../../../src/hosts/terminal/file/share";
import { partsOf, tiny } from "./tiny";

const ROWS = 50_000;

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine();
});
afterAll(() => engine.stop());

describe("a list of 50,000 logs", () => {
  it(
    "is shared whole: each log's scale by Doyle, its note, and the sum that leans on all of them",
    { timeout: 600_000 },
    async () => {
      const rows = Array.from({ length: ROWS }, (_, at) => {
        const [number, scale] = [at + 1, `<f>_xldudf_BOLE_LOGSCALE(A${at + 1},16,"Doyle")</f><v>0</v>`];
        return `<row r="${number}"><c r="A${number}"><v>${12 + (at % 20)}</v></c><c r="B${number}">${scale}</c></row>`;
      });
      rows.push(`<row r="${ROWS + 1}"><c r="B${ROWS + 1}"><f>SUM(B1:B${ROWS})</f><v>0</v></c></row>`);
      const { bytes, summary } = await shared(
        await tiny({ sheets: { Logs: rows.join("") } }),
        engine,
        new Date("2026-03-01"),
      );
      expect(summary).toContain("50000 cells on 1 sheet became values");
      const parts = await partsOf(bytes);
      const shown = [...parts["xl/worksheets/sheet1.xml"]!.matchAll(/<c r="B\d+"><v>(\d+)<\/v><\/c>/g)].map(([, v]) =>
        Number(v),
      );
      expect(shown).toHaveLength(ROWS);
      // Doyle with 16 ft: (D - 4)^2 board feet, D from 12 to 31 in, each 2,500 times.
      expect(shown.every((feet, at) => feet === (12 + (at % 20) - 4) ** 2)).toBe(true);
      // 8^2 + 9^2 + ... + 27^2 = 6,790.
      const sum = `<f>SUM(B1:B${ROWS})</f><v>${2500 * 6790}</v>`;
      expect(parts["xl/worksheets/sheet1.xml"]!.includes(sum)).toBe(true);
      expect(parts["xl/comments1.xml"]!.match(/<comment /g)).toHaveLength(ROWS);
      const ids = [...parts["xl/drawings/vmlDrawing1.vml"]!.matchAll(/ id="(_x0000_s\d+)"/g)].map(([, id]) => id);
      expect(new Set(ids).size).toBe(ROWS);
    },
  );
});
