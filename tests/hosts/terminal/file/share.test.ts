import { strFromU8, unzipSync } from "fflate";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { SHEET, aboutSheet, share } from "./sharing";
import { plain } from "../../../sheets/sample/parts";
import { cellsOf, roundCells } from "./tiny";
import { yard } from "./yard";

describe("a yard's workbook, shared", () => {
  it("differs from the original in these parts and in no other", async () => {
    const { diff } = await share(yard());
    expect(diff).toEqual({
      changed: [
        "[Content_Types].xml", // names the new sheet; the order of calculation is gone from it
        "xl/_rels/workbook.xml.rels", // the same
        "xl/comments1.xml", // the formulas
        "xl/drawings/vmlDrawing1.vml", // a shape for each new note
        "xl/tables/table1.xml", // no formula of ours for new rows
        "xl/workbook.xml", // lists the new sheet
        SHEET, // values where our formulas were
      ],
      added: ["xl/worksheets/sheet3.xml"],
      removed: ["xl/calcChain.xml"],
    });
  });

  it("changes no cell but those that asked Bole, and nothing round the cells", async () => {
    const { old, parts } = await share(yard());
    const [before, after] = [cellsOf(old[SHEET]!), cellsOf(parts[SHEET]!)];
    const changed = Object.keys(before).filter((address) => before[address] !== after[address]);
    expect(changed).toEqual(["C2", "C3", "C4", "A6"]);
    expect(Object.keys(after)).toEqual(Object.keys(before));
    expect(roundCells(parts[SHEET]!)).toBe(roundCells(old[SHEET]!));
    const style = / s="\d+"/.exec(before["C3"]!)?.[0];
    expect(after["C3"]).toBe(`<c r="C3"${style}><v>300</v></c>`);
    expect(after["C4"]).toMatch(/^<c r="C4"[^>]* t="e"><v>#N\/A<\/v><\/c>$/);
    expect(after["A6"]).toContain(' t="inlineStr"><is><t xml:space="preserve">Total 1 &lt; 2</t></is></c>');
  });

  it("changes these stretches of the other parts", async () => {
    const { old, parts } = await share(yard());
    const without = (xml: string, ...cuts: (string | RegExp)[]) =>
      cuts.reduce<string>((text, cut) => text.replace(cut, ""), xml);
    expect(parts["xl/tables/table1.xml"]).toBe(
      without(old["xl/tables/table1.xml"]!, /<calculatedColumnFormula>_xldudf.*?<\/calculatedColumnFormula>/),
    );
    const types = parts["[Content_Types].xml"]!;
    expect(without(types, /<Override PartName="\/xl\/worksheets\/sheet3.xml"[^>]*\/>/)).toBe(
      without(old["[Content_Types].xml"]!, /<Override PartName="\/xl\/calcChain.xml"[^>]*\/>/),
    );
    expect(
      without(parts["xl/workbook.xml"]!, /<sheet xmlns:r="[^"]*" name="About this copy" sheetId="\d+" r:id="\w+"\/>/),
    ).toBe(old["xl/workbook.xml"]);
    const relation = /<Relationship [^>]*Target="(?:calcChain|worksheets\/sheet3).xml"\/>/;
    expect(without(parts["xl/_rels/workbook.xml.rels"]!, relation)).toBe(
      without(old["xl/_rels/workbook.xml.rels"]!, relation),
    );
    expect(
      parts["xl/drawings/vmlDrawing1.vml"]!.replace(/,\d+(?="\/>)/, "").replace(
        /<v:shape id="_x0000_s2\d{3}".*?<\/v:shape>/gs,
        "",
      ),
    ).toBe(old["xl/drawings/vmlDrawing1.vml"]);
  });

  it("hangs each formula on its cell, below what was written there", async () => {
    const { bytes } = await share(yard());
    const comments = strFromU8(unzipSync(bytes)["xl/comments1.xml"]!);
    const note = (address: string) => {
      const whole = new RegExp(`<comment ref="${address}".*?</comment>`, "s").exec(comments)?.[0] ?? "";
      return plain([...whole.matchAll(/<t[^>]*>([^<]*)<\/t>/g)].map(([, text]) => text).join(""));
    };
    expect(note("C2")).toBe('Ask Ann first\nFormula: =BOLE.LOGSCALE(A2,B2,"Doyle")');
    expect(note("C3")).toBe('Formula: =BOLE.LOGSCALE(A3,B3,"Doyle")');
    expect(note("C4")).toMatch(/^Formula: =BOLE.LOGSCALE\(A4,B4,"Doyle"\)\n#N\/A: .*4/);
    expect(note("A3")).toBe("Measured twice");
  });

  it("says in words what was done", async () => {
    const { bytes, summary } = await share(yard());
    const lines = await aboutSheet(bytes);
    expect(lines).toContain("Values taken 2026-03-01, 14:05");
    expect(lines).toContain("Logs 4");
    expect(lines).toContain("The formula for new rows or totals was taken out of 1 table column (Log[Feet]).");
    expect(summary).toContain(
      "4 cells on 1 sheet became values, taken 2026-03-01, 14:05, their formulas kept as notes",
    );
  });

  it("comes out the same, sign by sign, whenever it is made for the same time", async () => {
    const [one, other] = [await share(yard()), await share(yard())];
    expect(one.parts).toEqual(other.parts);
  });

  it("can be shared only once: nothing of ours is left in it", async () => {
    const { bytes } = await share(yard());
    await expect(share(bytes)).rejects.toThrow("it holds no BOLE formula");
  });
});

describe("the sample workbook, shared", () => {
  const path = join(import.meta.dirname, "../../../../assets/bole-sample.xlsx");

  it("keeps every cell but ours, every value, and every part without our formulas", async () => {
    const { diff, old, parts } = await share(readFileSync(path));
    const ours = /_xldudf_BOLE_/;
    const sheets = Object.keys(old).filter((name) => /worksheets\/sheet\d+\.xml$/.test(name));
    const asking = sheets.filter((name) => ours.test(old[name]!));
    const expected = [
      "[Content_Types].xml",
      "xl/_rels/workbook.xml.rels",
      "xl/workbook.xml",
      ...asking,
      ...Object.keys(old).filter((name) => name.startsWith("xl/tables/") && ours.test(old[name]!)),
      // A sheet that had links to other sheets, a table or a chart now points at its notes as well.
      ...asking.map((name) => name.replace("worksheets/", "worksheets/_rels/") + ".rels").filter((name) => name in old),
    ];
    expect(diff.changed).toEqual(expected.sort());
    expect(diff.removed).toEqual([]);
    const kinds = new Set(diff.added.map((name) => name.replace(/\d+/, "")));
    expect([...kinds].sort()).toEqual(
      expect.arrayContaining(["xl/comments.xml", "xl/drawings/vmlDrawing.vml", "xl/worksheets/sheet.xml"]),
    );
    for (const name of sheets) {
      const [before, after] = [cellsOf(old[name]!), cellsOf(parts[name]!)];
      expect(Object.keys(after)).toEqual(Object.keys(before));
      const changed = Object.keys(before).filter((address) => before[address] !== after[address]);
      expect(changed, name).toEqual(Object.keys(before).filter((address) => ours.test(before[address]!)));
      for (const address of changed)
        expect(valueOf(after[address]!), `${name} ${address}`).toBe(valueOf(before[address]!));
      expect(roundCells(parts[name]!).replace(/<legacyDrawing [^>]*\/>/, ""), name).toBe(roundCells(old[name]!));
    }
    for (const [name, text] of Object.entries(parts))
      if (!name.includes("comments")) expect(ours.test(text), name).toBe(false);
  });

  /** What a cell shows, whichever way it is written. */
  function valueOf(cell: string): string {
    const shown = /<v>(.*)<\/v>/s.exec(cell)?.[1] ?? /<t[^>]*>(.*)<\/t>/s.exec(cell)?.[1] ?? "";
    return shown.replaceAll("&apos;", "'");
  }
});

describe("a workbook that LibreOffice wrote, with a chart, shared", () => {
  // Three invented logs, scaled by Doyle, their sum and a bar chart, saved as .xlsx by LibreOffice.
  const path = join(import.meta.dirname, "made-by-libreoffice.xlsx");

  it("differs in these parts and in no other", async () => {
    expect(existsSync(path)).toBe(true);
    const { diff, parts, old } = await share(readFileSync(path));
    expect(Object.keys(old).some((name) => name.includes("charts/chart"))).toBe(true);
    expect(diff).toEqual({
      changed: [
        "[Content_Types].xml", // names the new sheet, notes and shapes
        "xl/_rels/workbook.xml.rels", // names the new sheet
        "xl/workbook.xml", // lists the new sheet
        "xl/worksheets/_rels/sheet1.xml.rels", // points at the notes beside the chart
        SHEET, // values where our formulas were
      ],
      added: ["xl/comments1.xml", "xl/drawings/vmlDrawing1.vml", "xl/worksheets/sheet3.xml"],
      removed: [],
    });
    expect(parts["xl/comments1.xml"]).toContain("Formula: =BOLE.LOGSCALE(A2,B2,&quot;Doyle&quot;)");
    expect(parts[SHEET]).toMatch(/<drawing [^>]*\/><legacyDrawing /);
  });
});
