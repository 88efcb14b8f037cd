import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readCatalog } from "../../src/catalog/read-catalog";
import {
  AIRDRYDAYS,
  DRYFORECAST,
  DRYRATE,
  EMC,
  EMCHUMIDITY,
  KILNDAYS,
  MOISTURE,
  WATERTOLOSE,
} from "../../src/functions/drying";

const cell = (content: unknown) => [[content]];
const column = (...cells: unknown[]) => cells.map((content) => [content]);
const messageOf = (answer: unknown[][]) => (answer[0]![0] as { message: string }).message;

describe("air typed into the sheet", () => {
  it("is the same in Fahrenheit and Celsius, as 65, 65% and 0.65", () => {
    const humid = Number(EMC(cell(68), cell(65))[0]![0]);
    expect(EMC(cell("20 C"), cell("65%"))[0]![0]).toBeCloseTo(humid, 10);
    expect(EMC(cell("20 °C"), cell(0.65))[0]![0]).toBeCloseTo(humid, 10);
  });

  it.each([100, 101, "100%", 1])("of humidity %s has no answer", (humidity) => {
    expect(EMC(cell(70), cell(humidity))[0]![0]).toMatchObject({ error: "#N/A" });
  });

  it("colder or hotter than the equation's range has no answer, and the message says both limits", () => {
    expect(messageOf(EMC(cell(-10), cell(50)))).toContain("wanted 30 to 210, got -10");
    expect(messageOf(EMC(cell(300), cell(50)))).toContain("wanted 30 to 210, got 300");
  });

  it("for a moisture gives that moisture back", () => {
    const humidity = EMCHUMIDITY(cell(70), cell(8));
    expect(Number(EMC(cell(70), humidity)[0]![0]) / 8).toBeCloseTo(1, 10);
  });
});

describe("a target", () => {
  it("at or under the equilibrium moisture has no answer, and the message gives it", () => {
    const answer = AIRDRYDAYS(cell("cherry"), cell("4/4"), cell(null), cell(8));
    expect(answer[0]![0]).toMatchObject({ error: "#N/A" });
    expect(messageOf(answer)).toContain("dries wood to 12.0 and no further, got 8");
    expect(messageOf(KILNDAYS(cell("red oak"), cell(1), cell(60), cell(4), cell(120), cell(50)))).toContain(
      "no further",
    );
    expect(messageOf(DRYFORECAST(column(0, 30), column(60, 40), cell(12), cell(10)))).toContain("dries wood to 12");
  });
});

describe("readings typed into the sheet", () => {
  const days = column(0, 20, 45, null, null);
  const readings = column(62, "45%", 0.3, null, null);

  it("leave the rows not yet filled alone", () => {
    expect(DRYRATE(days, readings, cell(11))[5]).toEqual(["readings used", 3, ""]);
  });

  it("with a day but no reading yet are refused with the row", () => {
    const answer = DRYRATE(column(0, 20, 45), column(62, 45, null), cell(11));
    expect(answer[0]![0]).toMatchObject({ error: "#VALUE!" });
    expect(messageOf(answer)).toContain("row 3");
  });

  it("out of order or on one day have no answer", () => {
    expect(messageOf(DRYRATE(column(0, 45, 20), column(62, 40, 45), cell(11)))).toContain("got 20 after 45");
    expect(messageOf(DRYRATE(column(5, 5), column(62, 40), cell(11)))).toContain("got 5 after 5");
  });

  it("that rise contradict drying, and it says so", () => {
    expect(messageOf(DRYRATE(column(0, 20), column(40, 62), cell(11)))).toContain("do not fall toward 11 %");
  });
});

describe("the pages that fit a curve to readings", () => {
  it.each(["DRYRATE", "DRYFORECAST"])("%s says how far a pin meter can be believed", (name) => {
    const { remarks } = readCatalog().find((entry) => entry.name === name)!;
    expect(remarks.join(" ")).toMatch(/pin meter does not read true above about 25 to 30 %/);
  });
});

describe("weights typed into the sheet", () => {
  it("swapped have no answer", () => {
    expect(messageOf(MOISTURE(cell(20), cell(30)))).toContain("not under the dry weight");
  });

  it("of water are refused where there is none to lose", () => {
    expect(WATERTOLOSE(cell("cherry"), cell(100), cell(8), cell(12))[0]![0]).toMatchObject({ error: "#N/A" });
  });

  it("in kilograms and pounds give one moisture", () => {
    expect(Number(MOISTURE(cell("3 kg"), cell("2 kg"))[0]![0])).toBeCloseTo(50, 9);
  });
});

describe("what is from memory", () => {
  const ours = readCatalog().filter(({ topic }) => topic === "wood" || topic === "drying");
  const folders = ["wood", "drying"].map((folder) => new URL(`../../src/math/${folder}/`, import.meta.url));
  const files = folders.flatMap((folder) =>
    readdirSync(folder).map((name) => ({ name, text: readFileSync(new URL(name, folder), "utf8") })),
  );
  const saysSo = (text: string) => /@source from memory/.test(text);

  it("shows as such on the one page that rests on it, and on no other", () => {
    expect(ours.length).toBe(21);
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
    for (const { name } of tables)
      for (const { text } of files.filter(({ text }) => text.includes(`from "./${name.replace(/\.ts$/, "")}"`)))
        expect(saysSo(text)).toBe(true);
  });

  it("never stands under a document's name: every source is a document, plain, common practice or from memory", () => {
    for (const { name, formulas } of ours) {
      expect(formulas.length, name).toBeGreaterThan(0);
      for (const { sources } of formulas) expect(sources.length, name).toBeGreaterThan(0);
    }
  });
});
