import ExcelJS from "exceljs";
import JSZip from "jszip";

/** A picture of one red dot. */
const DOT = "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8DwHwAFBQIAX8jx0gAAAABJRU5ErkJggg==";
const DAY = new Date("2026-02-01T00:00:00Z");

const CALCULATION_ORDER =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
  '<calcChain xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><c r="C2" i="1"/><c r="C3"/><c r="D3"/></calcChain>';

/** An invented yard as another program saves it: looks, a table, a picture, notes, merged cells, rules, a second sheet. */
export async function yard(): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  Object.assign(book, { created: DAY, modified: DAY, creator: "yard" });
  const logs = book.addWorksheet("Logs", {
    views: [{ state: "frozen", ySplit: 1 }],
    pageSetup: { orientation: "landscape" },
  });
  const scale = (row: number, result: number) => ({
    formula: `_xldudf_BOLE_LOGSCALE(A${row},B${row},"Doyle")`,
    result,
  });
  logs.addTable({
    name: "Log",
    ref: "A1",
    headerRow: true,
    columns: [{ name: "Dia" }, { name: "Length" }, { name: "Feet" }, { name: "Twice" }],
    rows: [
      [20, "12'", scale(2, 192), { formula: "C2*2", result: 384 }],
      [24, "12'", scale(3, 300), { formula: "C3*2", result: 600 }],
      [3, "12'", { formula: '_xldudf_BOLE_LOGSCALE(A4,B4,"Doyle")', result: { error: "#N/A" } as never }, "none"],
    ],
  });
  logs.getCell("C2").note = { texts: [{ text: "Ask Ann" }, { font: { bold: true }, text: " first" }] };
  logs.getCell("A3").note = "Measured twice";
  logs.getCell("C3").style = {
    font: { bold: true },
    numFmt: "0.0",
    fill: { type: "pattern", pattern: "solid", fgColor: { argb: "FFFFFF00" } },
  };
  logs.mergeCells("A6:B7");
  logs.getCell("A6").value = { formula: '"Total "&_xldudf_BOLE_BOARDFEET(1,12,1)&" < 2"', result: "Total 1 < 2" };
  logs.getCell("D6").value = { formula: "SUM(C2:C3)", result: 492 };
  logs.addConditionalFormatting({
    ref: "A2:A4",
    rules: [{ type: "expression", priority: 1, formulae: ["A2>22"], style: { font: { bold: true } } }],
  });
  logs.getCell("F1").dataValidation = { type: "list", formulae: ['"Doyle,Scribner"'] };
  const picture = book.addImage({ base64: DOT, extension: "png" });
  logs.addImage(picture, "F3:G5");
  const other = book.addWorksheet("Prices");
  other.getCell("A1").value = { formula: "1+1", result: 2 };
  other.getCell("A2").value = "no Bole here";
  other.getCell("A2").note = "a note on a sheet that is not touched";
  const bytes = (await book.xlsx.writeBuffer()) as unknown as Uint8Array;
  return withWhatExcelAdds(bytes);
}

/** The formulas of table columns, the order of calculation and a part of another program, which the library cannot write. */
async function withWhatExcelAdds(bytes: Uint8Array): Promise<Uint8Array> {
  const zip = await JSZip.loadAsync(bytes);
  const edit = async (part: string, from: string | RegExp, to: string) => {
    const before = await zip.file(part)!.async("string");
    const after = before.replace(from, () => to);
    if (after === before) throw new Error(`${part} has no ${from}`);
    zip.file(part, after, { createFolders: false });
  };
  const column = (id: number, name: string, formula: string) =>
    `<tableColumn id="${id}" name="${name}"><calculatedColumnFormula>${formula}</calculatedColumnFormula></tableColumn>`;
  const table = "xl/tables/table1.xml";
  await edit(
    table,
    /<tableColumn id="3"[^>]*\/>/,
    column(3, "Feet", "_xldudf_BOLE_LOGSCALE(Log[[#This Row],[Dia]],Log[[#This Row],[Length]],&quot;Doyle&quot;)"),
  );
  await edit(table, /<tableColumn id="4"[^>]*\/>/, column(4, "Twice", "Log[[#This Row],[Feet]]*2"));
  const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.calcChain+xml";
  await edit(
    "[Content_Types].xml",
    "</Types>",
    `<Override PartName="/xl/calcChain.xml" ContentType="${type}"/></Types>`,
  );
  const relation = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/calcChain";
  await edit(
    "xl/_rels/workbook.xml.rels",
    "</Relationships>",
    `<Relationship Id="rId77" Type="${relation}" Target="calcChain.xml"/></Relationships>`,
  );
  zip.file("xl/calcChain.xml", CALCULATION_ORDER, { createFolders: false });
  zip.file("customXml/stranger.bin", new Uint8Array([0, 255, 13, 10, 60, 33]), { createFolders: false });
  return zip.generateAsync({ type: "uint8array", compression: "DEFLATE" });
}
