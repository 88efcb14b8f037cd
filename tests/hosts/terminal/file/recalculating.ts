import { afterAll, beforeAll, expect } from "vitest";
import { startEngine, type Engine } from "../../../../src/engine/engine";
import { recalculated } from "../../../../src/hosts/terminal/file/recalc";
import { differences, partsOf, tiny, type Tiny } from "./tiny";

/** 20 in by 12 ft scales 192 board feet by Doyle: ((20 - 4) / 4)^2 * 12. */
export const DOYLE_192 = "_xldudf_BOLE_LOGSCALE(A1,B1,&quot;Doyle&quot;)";
const AT = new Date("2026-03-01T00:00:00Z");
export const SHEET = "xl/worksheets/sheet1.xml";

export const row = (cells: string, number = 1) => `<row r="${number}">${cells}</row>`;
export const log = '<c r="A1"><v>20</v></c><c r="B1"><v>12</v></c>';

/** What becomes of a test file's workbooks: one engine for all of them, and the input stays as it was. */
export function recalculating() {
  let engine: Engine;
  beforeAll(async () => void (engine = await startEngine()));
  afterAll(() => engine.stop());

  async function recalcFile(before: Uint8Array) {
    const kept = Uint8Array.from(before);
    const made = await recalculated(before, engine, AT);
    expect(Uint8Array.from(before), "the input stays as it was").toEqual(kept);
    return { ...made, diff: await differences(before, made.bytes), parts: await partsOf(made.bytes) };
  }
  return { recalcFile, recalc: async (what: Tiny) => recalcFile(await tiny(what)) };
}
