import { describe, expect, it } from "vitest";
import { readCatalog } from "../../../../src/catalog/read-catalog";
import { cells, formulas, parts, sheets, tables, within, withoutText } from "./sample-file";

describe("the formulas in the sample workbook's file", () => {
  it("stores our functions so that Excel finds the add-in again, and no other way", () => {
    const ours = formulas.filter(({ formula }) => /BOLE/i.test(withoutText(formula)));
    expect(ours.length).toBeGreaterThan(1200);
    const names = readCatalog().map(({ name }) => name);
    for (const { sheet, address, formula } of ours) {
      const found = [...withoutText(formula).matchAll(/([\w.]*)BOLE[._]?(\w+)/gi)];
      for (const [whole, before, name = ""] of found) {
        expect(before, `${sheet}!${address} ${whole}`).toBe("_xldudf_");
        expect(names, `${sheet}!${address}`).toContain(name);
      }
    }
  });

  it("gives newer functions of Excel their long names", () => {
    const bare = formulas.filter(({ formula }) =>
      /(?<![.\w])(?:XLOOKUP|MAXIFS|FILTER|SORT|LET|IFNA|TEXTJOIN)\(/.test(withoutText(formula)),
    );
    expect(bare).toEqual([]);
  });

  it("names every table with brackets, which the file wants even round nothing", () => {
    const names = tables.map(({ name }) => name);
    const bare = new RegExp(`(?<![\\w.'!])(?:${names.join("|")})(?![\\w.\\['!])`);
    expect(formulas.filter(({ formula }) => bare.test(withoutText(formula).replace(/\[[^\]]*\]/g, "[]")))).toEqual([]);
  });

  it("marks every formula that spills as a dynamic array, with its values in the cells it fills", () => {
    const spilled = cells.filter(({ inner }) => inner.includes('<f t="array"'));
    expect(spilled.filter(({ inner }) => /ref="[A-Z]+\d+:/.test(inner)).length).toBeGreaterThan(15);
    expect(spilled.filter(({ attributes }) => !attributes.includes(' cm="1"'))).toEqual([]);
    expect(cells.filter(({ attributes, inner }) => attributes.includes("cm=") && !inner.includes('t="array"'))).toEqual(
      [],
    );
    for (const { sheet, address, inner } of spilled) {
      const [from, to] = /ref="([A-Z]+\d+):?([A-Z]+\d+)?"/.exec(inner)!.slice(1);
      expect(from, sheet).toBe(address);
      if (!to || to === from) continue;
      const last = cells.filter(
        (cell) => cell.sheet === sheet && within(cell.address, from!, to) && cell.value !== undefined,
      );
      expect(last.length, `${sheet}!${address}`).toBeGreaterThan(1);
    }
  });

  it("writes every call of ours as Excel itself saves it, so that no @ shows before it", () => {
    const ours = cells.filter(({ formula }) => /_xldudf_BOLE_/.test(withoutText(formula ?? "")));
    expect(ours.length).toBeGreaterThan(1200);
    expect(ours.filter(({ attributes, inner }) => !/ cm="1"/.test(attributes) || !/<f t="array"/.test(inner))).toEqual(
      [],
    );
    for (const { xml } of tables)
      for (const [, array, formula = ""] of xml.matchAll(/<calculatedColumnFormula( array="1")?>([^<]*)</g))
        expect(array !== undefined, formula).toBe(formula.includes("_xldudf_BOLE_"));
  });

  it("keeps formulas that spill out of tables", () => {
    for (const { sheet, from, to } of tables) {
      const inside = cells.filter((cell) => cell.sheet === sheet && within(cell.address, from, to));
      expect(inside.filter(({ inner }) => /<f t="array" ref="[A-Z]+\d+:/.test(inner))).toEqual([]);
    }
  });

  it("keeps our functions out of rules and validation, where they fail", () => {
    let found = 0;
    for (const { path } of sheets) {
      const rules = parts.get(path)!.match(/<(conditionalFormatting|dataValidations)\b.*?<\/\1>/g) ?? [];
      expect(rules.join("")).not.toMatch(/BOLE/);
      found += rules.length;
    }
    expect(found).toBeGreaterThan(10);
  });

  it("says on the sheets where figures are typed whether the add-in answers", () => {
    const asks = formulas.filter(({ formula }) => formula.includes("_xldudf_BOLE_VERSION()"));
    expect(asks.find(({ sheet }) => sheet === "Start here")?.formula).toBe("_xldudf_BOLE_VERSION()");
    expect(asks.length).toBeGreaterThan(8);
    for (const { sheet, formula } of asks.slice(1).filter(({ sheet: name }) => name !== "Functions"))
      expect(formula, sheet).toMatch(/^(?:_xldudf_BOLE_VERSION\(\)$|IFERROR\(.*Bole is missing)/);
  });
});
