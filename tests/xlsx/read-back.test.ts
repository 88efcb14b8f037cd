import { describe, expect, it } from "vitest";
import { mustKeepTheRest } from "../../src/xlsx/read-back";
import { tinyParts, zipped } from "../hosts/terminal/file/tiny";

const AT = new Date("2026-03-01T00:00:00Z");
const SHEET = "xl/worksheets/sheet1.xml";
const SCALE = `<conditionalFormatting sqref="B1"><cfRule type="colorScale" priority="1"><colorScale><cfvo type="min"/></colorScale></cfRule></conditionalFormatting>`;
const before = tinyParts({
  sheets: { Logs: `<row r="1"><c r="A1" s="2"><v>1</v></c><c r="B1"><f>A1+1</f><v>9</v></c></row>` },
  after: SCALE,
  parts: { "docProps/note.txt": "kept", "xl/tables/table1.xml": `<table name="T"><tableColumn name="Dia"/></table>` },
});

/** What the reading back says of a file in which some text was replaced. */
async function readBack(part: string, from: string, to: string, mayChange = { cells: ["0 1"], parts: [] as string[] }) {
  expect(before[part]).toContain(from);
  const after = { ...before, [part]: before[part]!.replace(from, to) };
  const intended = { cells: new Map([[SHEET, new Set(mayChange.cells)]]), parts: new Set(mayChange.parts) };
  mustKeepTheRest(await zipped(before), await zipped(after), intended, AT);
}

describe("a workbook that is read back before it replaces anything", () => {
  it("may differ in the cells that were to change", async () => {
    await readBack(SHEET, "<v>9</v>", "<v>2</v>");
  });

  it("may have new cells in new rows, and write the same in other signs", async () => {
    await readBack(SHEET, "</sheetData>", `<row r="4"><c r="A4"><v>5</v></c></row></sheetData>`, {
      cells: ["3 0"],
      parts: [],
    });
    await readBack(SHEET, ` s="2"`, ` s='2' `);
  });

  it.each([
    ["another cell's value", SHEET, "<v>1</v>", "<v>7</v>"],
    ["another cell's style", SHEET, ` s="2"`, ` s="3"`],
    ["a rule behind the rows that went into a cell", SHEET, `</sheetData>${SCALE}`, `</sheetData>`],
    ["a row too many", SHEET, "</sheetData>", `<row r="2"><c r="A2"><v>5</v></c></row></sheetData>`],
    ["a row's height", SHEET, `<row r="1">`, `<row r="1" ht="30">`],
    ["XML that is none", SHEET, "</sheetData>", "</sheetdata>"],
    ["a part nobody was to touch", "docProps/note.txt", "kept", "lost"],
    ["a part nobody was to touch, in a letter's case", "xl/tables/table1.xml", "Dia", "dia"],
  ])("is refused for %s", async (_, part, from, to) => {
    await expect(readBack(part, from, to)).rejects.toThrow(/does not read back as it should: .*part/);
  });

  it("is refused for a part that is gone, and for one nobody asked for", async () => {
    const without = Object.fromEntries(Object.entries(before).filter(([part]) => part !== "docProps/note.txt"));
    const [whole, less] = [await zipped(before), await zipped(without)];
    const nothing = { cells: new Map<string, Set<string>>(), parts: new Set<string>() };
    expect(() => mustKeepTheRest(whole, less, nothing, AT)).toThrow("its part docProps/note.txt is gone");
    expect(() => mustKeepTheRest(less, whole, nothing, AT)).toThrow("it was not to have");
  });

  it("lets a part that was to change say more, but nothing less", async () => {
    const mayChange = { cells: [], parts: ["xl/tables/table1.xml"] };
    await readBack("xl/tables/table1.xml", "</table>", `<tableColumn name="Feet"/></table>`, mayChange);
    await expect(
      readBack("xl/tables/table1.xml", `<tableColumn name="Dia"/>`, `<tableColumn name="Len"/>`, mayChange),
    ).rejects.toThrow("its part xl/tables/table1.xml lost something");
  });
});
