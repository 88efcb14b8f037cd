import { existsSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, it, vi } from "vitest";
import { run, withEngine } from "../../../../src/hosts/terminal/file/command";
import { recalculated } from "../../../../src/hosts/terminal/file/recalc";
import { shared } from "../../../../src/hosts/terminal/file/share";
import type * as SheetEdit from "../../../../src/xlsx/sheet-edit";
import { tiny } from "./tiny";

/** What the editor does wrong in a test: it is handed the sheet as edited and answers what is written. */
let fault: (xml: string) => string = (xml) => xml;

vi.mock("../../../../src/xlsx/sheet-edit", async (original) => {
  const real = await original<typeof SheetEdit>();
  return { ...real, withCells: (...given: Parameters<typeof real.withCells>) => fault(real.withCells(...given)) };
});

const NOW = new Date("2026-03-01T14:05:00");
const SCALE =
  '<colorScale><cfvo type="min"/><cfvo type="max"/><color rgb="FFFF0000"/><color rgb="FF00FF00"/></colorScale>';

const workbook = tiny({
  sheets: {
    Logs:
      '<row r="1"><c r="A1"><v>20</v></c><c r="B1" t="inlineStr"><is><t>maple &amp; ash</t></is></c></row>' +
      '<row r="2"><c r="A2"><f>_xldudf_BOLE_KERFLOSS(1,0.125)</f><v>0</v></c></row>',
  },
  after: `<conditionalFormatting sqref="A1"><cfRule type="colorScale" priority="1">${SCALE}</cfRule></conditionalFormatting>`,
});

afterEach(() => void vi.restoreAllMocks());

/* An editor of files that goes wrong must never reach a person's file: what was written is read back and refused. */
describe.each([
  ["swallows what stands behind the rows", (xml: string) => xml.replace(/<cfvo type="max"\/>/, "")],
  ["drops a cell", (xml: string) => xml.replace(/<c r="A1">.*?<\/c>/, "")],
  ["changes a value that was not to change", (xml: string) => xml.replace("<v>20</v>", "<v>21</v>")],
  ["changes a text", (xml: string) => xml.replace("maple", "Maple")],
  ["moves a cell into the next row", (xml: string) => xml.replace('<row r="1">', '<row r="1"/><row r="3">')],
  ["leaves a tag open", (xml: string) => xml.replace("</sheetData>", "")],
  ["writes a sheet that is cut off", (xml: string) => xml.slice(0, -20)],
])("an edit that %s", (_, wrong) => {
  it.each([
    { name: "recalc", make: withEngine(recalculated), inPlace: true },
    { name: "share", make: withEngine(shared), inPlace: false },
  ])("is refused by $name in one line, and nothing is written", async ({ name, make, inPlace }) => {
    const folder = mkdtempSync(join(tmpdir(), "bole-"));
    const [from, to] = [join(folder, "in.xlsx"), join(folder, "out.xlsx")];
    writeFileSync(from, workbook);
    const said = vi.spyOn(console, "error").mockImplementation(() => undefined);
    vi.spyOn(console, "log").mockImplementation(() => undefined);
    fault = wrong;
    const code = await run({ name, does: "", inPlace, make }, [from, to], NOW);
    fault = (xml) => xml;
    expect(said.mock.calls.flat().join("\n")).toMatch(
      /^[^\n]*: (?:what was made of it does not read back as it should|its XML is broken)[^\n]*Nothing was written\.$/,
    );
    expect(code).toBe(1);
    expect(existsSync(to)).toBe(false);
    expect(await run({ name, does: "", inPlace, make }, [from, to], NOW), "the same without the fault").toBe(0);
  });
});
