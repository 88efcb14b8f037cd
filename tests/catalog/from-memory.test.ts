import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readCatalog } from "../../src/catalog/read-catalog";

describe("what is from memory in wood and drying", () => {
  const ours = readCatalog().filter(({ topic }) => topic === "wood" || topic === "drying");
  const folders = ["wood", "drying"].map((folder) => new URL(`../../src/math/${folder}/`, import.meta.url));
  const files = folders.flatMap((folder) =>
    readdirSync(folder).map((name) => ({ name, text: readFileSync(new URL(name, folder), "utf8") })),
  );
  const saysSo = (text: string) => /@source from memory/.test(text);

  it("shows as such on the one page that rests on it, and on no other", () => {
    expect(ours.length).toBe(23);
    const fromMemory = ours.filter(({ formulas }) =>
      formulas.some(({ sources }) => sources.some((s) => /^from memory/.test(s))),
    );
    expect(fromMemory.map(({ name }) => name)).toEqual(["AIRDRYDAYS"]);
    expect(fromMemory[0]!.grade).toMatch(/from memory/);
    expect(fromMemory[0]!.remarks.join()).toMatch(/from memory/);
  });

  it("is said by every formula that imports a table from memory", () => {
    const tables = files.filter(({ name, text }) => name.endsWith(".table.ts") && saysSo(text));
    expect(tables.map(({ name }) => name)).toEqual(["air-drying-days.table.ts"]);
    const using = files.filter(({ text }) => text.includes('from "./air-drying-days.table"'));
    expect(using.map(({ name }) => name)).toEqual(["air-dry-days.ts"]);
    for (const { text } of using) expect(saysSo(text)).toBe(true);
  });
});
