import { afterAll, beforeAll, expect } from "vitest";
import { startEngine, type Engine } from "../../../../src/engine/engine";
import { readWorkbook } from "../../../../src/engine/workbook/read";
import { shared } from "../../../../src/hosts/terminal/file/share";
import { differences, partsOf, tiny, type Tiny } from "./tiny";

export const AT = new Date("2026-03-01T14:05:00Z");
export const SHEET = "xl/worksheets/sheet1.xml";
export const MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine();
});
afterAll(() => engine.stop());

/** Shares a workbook and tells in what the copy differs. */
export async function share(before: Uint8Array) {
  const kept = Uint8Array.from(before);
  const made = await shared(before, engine, AT);
  expect(Uint8Array.from(before), "the input stays as it was").toEqual(kept);
  return {
    ...made,
    diff: await differences(before, made.bytes),
    old: await partsOf(before),
    parts: await partsOf(made.bytes),
  };
}

export const shareTiny = async (what: Tiny) => share(await tiny(what));
export const row = (cells: string, number = 1) => `<row r="${number}">${cells}</row>`;

/** What the copy says about itself: its last sheet's first two columns. */
export function aboutSheet(bytes: Uint8Array): string[] {
  const { cells } = readWorkbook(bytes).sheets.at(-1)!;
  const lines = new Map<number, string[]>();
  for (const { row, value } of cells) lines.set(row, [...(lines.get(row) ?? []), String(value ?? "")]);
  return [...lines.values()].map((line) => line.join(" ").trim());
}
