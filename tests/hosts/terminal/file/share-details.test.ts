import { describe, expect, it } from "vitest";
import { MAIN, SHEET, aboutSheet, row, shareTiny } from "./sharing";
import { cellXml, override } from "./tiny";

describe("sharing", () => {
  it("turns a spilled answer into values and names its cells where # pointed at it", async () => {
    const spill =
      '<c r="A1" s="0" t="str" cm="1"><f t="array" ref="A1:A2">_xldudf_BOLE_FRACTION({8.5;2})</f><v>8-1/2</v></c>';
    const { parts, summary } = await shareTiny({
      sheets: {
        "Cut plan": `${row(`${spill}<c r="C1" t="str"><f>TEXTJOIN(",",TRUE,_xlfn.ANCHORARRAY(A1))</f><v>8-1/2,2</v></c>`)}${row('<c r="A2" t="str"><v>2</v></c>', 2)}`,
        Other: row("<c r=\"A1\"><f>ROWS(_xlfn.ANCHORARRAY('Cut plan'!A1))</f><v>2</v></c>"),
      },
      after:
        '<dataValidations count="1"><dataValidation type="list" sqref="E1"><formula1>_xlfn.ANCHORARRAY($A$1)</formula1></dataValidation></dataValidations>',
      workbook:
        "<definedNames><definedName name=\"Sizes\">_xlfn.ANCHORARRAY('Cut plan'!$A$1)</definedName></definedNames>",
    });
    const sheet = parts[SHEET]!;
    expect(cellXml(sheet, "A1")).toBe('<c r="A1" s="0" t="inlineStr"><is><t xml:space="preserve">8-1/2</t></is></c>');
    expect(cellXml(sheet, "A2")).toBe('<c r="A2" t="str"><v>2</v></c>');
    expect(cellXml(sheet, "C1")).toContain("<f>TEXTJOIN(&quot;,&quot;,TRUE,$A$1:$A$2)</f><v>8-1/2,2</v>");
    expect(sheet).toContain("<formula1>$A$1:$A$2</formula1>");
    expect(parts["xl/worksheets/sheet2.xml"]).toContain("<f>ROWS('Cut plan'!$A$1:$A$2)</f>");
    expect(parts["xl/workbook.xml"]).toContain(">'Cut plan'!$A$1:$A$2</definedName>");
    expect(parts["xl/comments1.xml"]).toContain("Formula: =BOLE.FRACTION({8.5;2})\nIts answer fills A1:A2.");
    expect(summary).toContain("4 formulas that pointed at a spilled answer (with #)");
  });

  it("gives each cell of a formula that was copied down its own note", async () => {
    const first = '<f t="shared" ref="C1:C2" si="0">_xldudf_BOLE_LOGSCALE(A1,B$1,"Doyle")</f><v>192</v>';
    const rows = [
      row(`<c r="A1"><v>20</v></c><c r="B1"><v>12</v></c><c r="C1">${first}</c>`),
      row('<c r="A2"><v>24</v></c><c r="C2"><f t="shared" si="0"/><v>300</v></c>', 2),
    ];
    const { parts } = await shareTiny({ sheets: { Logs: rows.join("") } });
    expect(cellXml(parts[SHEET]!, "C1")).toBe('<c r="C1"><v>192</v></c>');
    expect(cellXml(parts[SHEET]!, "C2")).toBe('<c r="C2"><v>300</v></c>');
    expect(parts["xl/comments1.xml"]).toContain("=BOLE.LOGSCALE(A1,B$1,&quot;Doyle&quot;)");
    expect(parts["xl/comments1.xml"]).toContain("=BOLE.LOGSCALE(A2,B$1,&quot;Doyle&quot;)");
  });

  it("takes our functions out of a table's totals and leaves the spreadsheet's own", async () => {
    const columns = (own: string) =>
      `<tableColumn id="1" name="Feet"${own}</tableColumn><tableColumn id="2" name="Paid" totalsRowFunction="sum"/>`;
    const table = (own: string) =>
      `<table ${MAIN} id="1" name="T" displayName="T" ref="A1:B3" totalsRowCount="1"><tableColumns count="2">${columns(own)}</tableColumns></table>`;
    const ours = "_xldudf_BOLE_BOARDFEET(SUM(T[Feet]),12,1)";
    const { parts, summary } = await shareTiny({
      sheets: {
        Logs: [
          row('<c r="A1" t="inlineStr"><is><t>Feet</t></is></c><c r="B1" t="inlineStr"><is><t>Paid</t></is></c>'),
          row('<c r="A2"><v>2</v></c><c r="B2"><v>5</v></c>', 2),
          row(`<c r="A3"><f>${ours}</f><v>2</v></c><c r="B3"><f>SUBTOTAL(109,T[Paid])</f><v>5</v></c>`, 3),
        ].join(""),
      },
      after: '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>',
      parts: {
        "xl/tables/table1.xml": table(` totalsRowFunction="custom"><totalsRowFormula>${ours}</totalsRowFormula>`),
      },
      sheetRelations: [["table", "../tables/table1.xml"]],
      types: override("xl/tables/table1.xml", "application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml"),
    });
    expect(parts["xl/tables/table1.xml"]).toBe(table(">"));
    expect(cellXml(parts[SHEET]!, "A3")).toBe('<c r="A3"><v>2</v></c>');
    expect(cellXml(parts[SHEET]!, "B3")).toBe('<c r="B3"><f>SUBTOTAL(109,T[Paid])</f><v>5</v></c>');
    expect(parts[SHEET]).toMatch(/<\/sheetData><legacyDrawing [^>]*\/><tableParts /);
    expect(summary).toContain("1 table column (T[Feet])");
  });

  it("freezes cells that ask Bole through a name, and says that the name itself no longer answers", async () => {
    const { parts, summary } = await shareTiny({
      sheets: { Logs: row('<c r="A1"><v>20</v></c><c r="B1"><f>Scaled*2</f><v>384</v></c>') },
      workbook:
        '<definedNames><definedName name="Scaled">_xldudf_BOLE_LOGSCALE(Logs!$A$1,12,"Doyle")</definedName></definedNames>',
    });
    expect(cellXml(parts[SHEET]!, "B1")).toBe('<c r="B1"><v>384</v></c>');
    expect(parts["xl/comments1.xml"]).toContain("Formula: =Scaled*2");
    expect(summary).toContain("1 name still stands for a BOLE formula and shows #NAME? here: Scaled");
  });

  it("calculates values that the file holds out of date or not at all, and says so", async () => {
    const { parts, summary } = await shareTiny({
      sheets: {
        Logs: row(
          '<c r="A1"><v>20</v></c><c r="B1"><f>_xldudf_BOLE_LOGSCALE(A1,12,"Doyle")</f><v>100</v></c>' +
            '<c r="C1" t="e"><f>_xldudf_BOLE_LOGSCALE(A1,24,"Doyle")</f><v>#NAME?</v></c>' +
            '<c r="D1"><f>_xldudf_BOLE_BOARDFEET(1,12,1)</f></c><c r="E1"><f>B1+1</f><v>101</v></c><c r="F1"><f>B1+2</f><v>7</v></c>',
        ),
      },
    });
    const shown = ["B1", "C1", "D1", "E1", "F1"].map(
      (address) => /<v>(.*)<\/v>/.exec(cellXml(parts[SHEET]!, address)!)?.[1],
    );
    expect(shown).toEqual(["192", "384", "1", "193", "7"]);
    expect(summary).toContain("2 of these values were out of date in the file and calculated afresh: Logs!B1, Logs!C1");
    expect(summary).toContain("Logs!D1");
    expect(summary).toMatch(/1 formula that lean.* may be out of date until Excel calculates: Logs!F1/);
  });

  it("takes the file's value where the engine cannot calculate, and an error where there is none", async () => {
    const ask = (address: string, value: string) =>
      `<c r="${address}"><f>_xldudf_BOLE_BOARDFEET(CUBEVALUE("x"),12,1)</f>${value}</c>`;
    const { parts, summary } = await shareTiny({ sheets: { Logs: row(ask("A1", "<v>3</v>") + ask("B1", "")) } });
    expect(cellXml(parts[SHEET]!, "A1")).toBe('<c r="A1"><v>3</v></c>');
    expect(cellXml(parts[SHEET]!, "B1")).toBe('<c r="B1" t="e"><v>#N/A</v></c>');
    expect(summary).toContain("2 cells kept the file's value because it uses CUBEVALUE");
  });

  it("leaves threads alone and names the formula on its own sheet instead", async () => {
    const comments = `<comments ${MAIN}><authors><author>tc={1}</author></authors><commentList><comment ref="A1" authorId="0"><text><t>[Threaded comment] ok?</t></text></comment></commentList></comments>`;
    const thread =
      '<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="A1" id="{1}"><text>ok?</text></threadedComment></ThreadedComments>';
    const { parts, old, bytes } = await shareTiny({
      sheets: { Logs: row('<c r="A1"><f>_xldudf_BOLE_BOARDFEET(1,12,1)</f><v>1</v></c>') },
      parts: { "xl/comments1.xml": comments, "xl/threadedComments/threadedComment1.xml": thread },
      sheetRelations: [
        ["comments", "../comments1.xml"],
        ["threadedComment", "../threadedComments/threadedComment1.xml"],
      ],
      types: override("xl/comments1.xml", "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml"),
    });
    expect(parts["xl/comments1.xml"]).toBe(old["xl/comments1.xml"]);
    expect(cellXml(parts[SHEET]!, "A1")).toBe('<c r="A1"><v>1</v></c>');
    expect((await aboutSheet(bytes)).join("\n")).toContain("Logs!A1 =BOLE.BOARDFEET(1,12,1)");
  });

  it("keeps macros, and says rules for colours that asked Bole", async () => {
    const vba = "\u00d0\u00cf vba";
    const { parts, old, macros, summary } = await shareTiny({
      sheets: { Logs: row('<c r="A1"><f>_xldudf_BOLE_BOARDFEET(1,12,1)</f><v>1</v></c>'), "About this copy": "" },
      after:
        '<conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>_xldudf_BOLE_BOARDFEET(1,12,1)&gt;0</formula></cfRule></conditionalFormatting>',
      parts: { "xl/vbaProject.bin": vba },
      workbookRelations: [["vbaProject", "vbaProject.bin"]],
      macros: true,
    });
    expect(macros).toBe(true);
    expect(parts["xl/vbaProject.bin"]).toBe(old["xl/vbaProject.bin"]);
    expect(parts["xl/workbook.xml"]).toContain('name="About this copy 2"');
    expect(summary).toContain("rules for colours or entries still ask BOLE on Logs");
  });
});
