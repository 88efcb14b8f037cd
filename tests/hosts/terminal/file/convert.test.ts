import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { converted } from "../../../../src/hosts/terminal/file/convert";
import { BAD, GOOD } from "./bad-workbooks";
import { AT, MAIN, row, SHEET } from "./sharing";
import { cellsOf, cellXml, differences, partsOf, tiny, type Tiny } from "./tiny";

const SAMPLE = readFileSync(join(import.meta.dirname, "../../../../assets/bole-sample.xlsx"));
const WORKBOOK = "xl/workbook.xml";
const EMC = "_xldudf_BOLE_EMC";

const to = async (host: string, before: Uint8Array) => {
  const made = await converted(before, AT, host);
  return { ...made, parts: partsOf(made.bytes), diff: differences(before, made.bytes) };
};
const toOnline = (what: Tiny) => to("online", tiny(what));

/** An extension's rule, as Excel writes those that look at other sheets. */
const laterRule = (formula: string) =>
  `<extLst><ext xmlns:x14="x" xmlns:xm="m"><x14:cfRule><xm:f>${formula}</xm:f></x14:cfRule></ext></extLst>`;

describe("the sample, for the online sheet and back", async () => {
  const online = await to("online", SAMPLE);

  it("calls every function by its plain name, and nothing else of it changed", () => {
    const before = partsOf(SAMPLE);
    expect(online.diff).toMatchObject({ added: [], removed: [] });
    expect(online.diff.changed.length).toBeGreaterThan(20);
    for (const [part, xml] of Object.entries(before))
      expect(online.parts[part] === xml.replace(/_xldudf_BOLE_(?=[A-Z0-9]+\b)/g, "BOLE_"), part).toBe(true);
    expect(online.summary).toMatch(/^\d{4} calls of BOLE functions on \d\d sheets now spelled BOLE_NAME, as the/);
    const called = Object.values(before).flatMap(
      (xml) => [...xml.matchAll(/<f\b[^<]*?<\/f>/g)].join("").match(/_xldudf_BOLE_/g) ?? [],
    );
    expect(online.summary.startsWith(`${called.length} calls`)).toBe(true);
  });

  it("comes back byte for byte", async () => {
    const back = await to("excel", online.bytes);
    expect(differences(SAMPLE, back.bytes)).toEqual({ changed: [], added: [], removed: [] });
    const counts = (summary: string) => summary.split("; ").slice(0, 2).join().match(/\d+/g);
    expect(counts(back.summary)).toEqual(counts(online.summary));
    expect(back.summary).toContain("now spelled as Excel stores them");
  });
});

describe("the formulas of a workbook", () => {
  it("change in their letters only: values, array forms and what was copied down stay", async () => {
    const cells = [
      `<c r="A1" cm="1"><f t="array" ref="A1:A2">${EMC}(D1:D2,E1:E2)</f><v>1.10</v></c>`,
      `<c r="B1" s="3"><f t="shared" ref="B1:B2" si="0">${EMC}(D1,&quot;BOLE.EMC(1)&quot;)</f><v>2</v></c>`,
      `<c r="C1" t="str"><f ca="1">SUM(D1)</f><v>x</v></c>`,
    ];
    const second = `<c r="A2"><v>1.20</v></c><c r="B2"><f t="shared" si="0"/><v>3</v></c>`;
    const what = { sheets: { Yard: row(cells.join("")) + row(second, 2) } };
    const made = await toOnline(what);
    expect(cellsOf(made.parts[SHEET]!)).toEqual({
      A1: '<c r="A1" cm="1"><f t="array" ref="A1:A2">BOLE_EMC(D1:D2,E1:E2)</f><v>1.10</v></c>',
      B1: expect.stringMatching(
        /^<c r="B1" s="3"><f t="shared" ref="B1:B2" si="0">BOLE_EMC\(D1,.*BOLE\.EMC\(1\).*<v>2<\/v>/,
      ) as string,
      C1: cells[2],
      A2: '<c r="A2"><v>1.20</v></c>',
      B2: '<c r="B2"><f t="shared" si="0"/><v>3</v></c>',
    });
    expect(made.diff).toEqual({ changed: [SHEET], added: [], removed: [] });
    expect(made.summary).toMatch(/^3 calls of BOLE functions on 1 sheet now/);
  });

  it("in names, rules and tables' new rows change too", async () => {
    const table = `<table ${MAIN} name="Logs" displayName="Logs" ref="D1:D2"><tableColumns count="1"><tableColumn id="1" name="Dia"><calculatedColumnFormula>${EMC}(1,2)</calculatedColumnFormula></tableColumn></tableColumns></table>`;
    const made = await toOnline({
      sheets: { Yard: row('<c r="A1"><v>1</v></c>') },
      after: `<conditionalFormatting sqref="A1"><cfRule type="expression" priority="1"><formula>${EMC}(A1,5)&gt;8</formula></cfRule></conditionalFormatting><dataValidations><dataValidation sqref="A1"><formula1>${EMC}(1,1)</formula1></dataValidation></dataValidations><tableParts><tablePart r:id="rId1"/></tableParts>`,
      workbook: `<definedNames><definedName name="Now">${EMC}(70,50)</definedName></definedNames>`,
      sheetRelations: [["table", "../tables/table1.xml"]],
      parts: { "xl/tables/table1.xml": table },
    });
    expect(made.parts[SHEET]).toContain("<formula>BOLE_EMC(A1,5)&gt;8</formula>");
    expect(made.parts[SHEET]).toContain("<formula1>BOLE_EMC(1,1)</formula1>");
    expect(made.parts[WORKBOOK]).toContain(">BOLE_EMC(70,50)</definedName>");
    expect(made.parts["xl/tables/table1.xml"]).toContain(">BOLE_EMC(1,2)</calculatedColumnFormula>");
    expect(made.summary).toContain("so were 4 formulas of names, rules and tables' new rows");
  });

  it("that cannot be converted are left and told", async () => {
    const made = await toOnline({
      sheets: {
        Yard: row(
          `<c r="A1"><f>${EMC}(1,2)</f></c><c r="B1"><f>BOLE.NONE(1)</f></c><c r="C1"><f>SUM(_xlfn.ANCHORARRAY(A1))</f></c>`,
        ),
      },
      after: laterRule(`${EMC}(A1,1)&gt;8`),
    });
    expect(made.parts[SHEET]).toContain(laterRule(`${EMC}(A1,1)&gt;8`));
    expect(cellXml(made.parts[SHEET]!, "B1")).toBe('<c r="B1"><f>BOLE.NONE(1)</f></c>');
    expect(made.summary).toContain("left as found, since Bole has no such function: NONE");
    expect(made.summary).toContain("rules of the newer kind, which look at other sheets, left as found on Yard");
    expect(made.summary).toMatch(/1 formula that point.* at a spilled answer with # left as found.*: Yard!C1/);
  });

  it("that look for an error of ours are told, for there it is text", async () => {
    const cells = `<c r="A1"><f>IFERROR(${EMC}(1,2),0)</f></c><c r="B1"><f>IFERROR(A1,0)+${EMC}(1,2)</f></c><c r="C1"><f>IFERROR(A1,0)</f></c>`;
    const made = await toOnline({ sheets: { Yard: row(cells) } });
    expect(made.summary).toMatch(/2 formulas that ask BOLE within IFERROR or the like .*: Yard!A1, Yard!B1$/);
    expect((await to("excel", made.bytes)).summary).not.toContain("IFERROR");
  });

  it("that the online sheet saved in a text come back, or are told", async () => {
    const saved = (formula: string) => `<f>IFERROR(__xludf.DUMMYFUNCTION("${formula}"),12.5)</f><v>12.5</v>`;
    const cells = [saved("BOLE_EMC(70,50)"), saved("ARRAYFORMULA(BOLE_EMC(D1:D9,50))"), saved("IMPORTRANGE(A1)")];
    const made = await to(
      "excel",
      tiny({ sheets: { Yard: row(cells.map((cell, at) => `<c r="${"ABC"[at]}1">${cell}</c>`).join("")) } }),
    );
    expect(cellXml(made.parts[SHEET]!, "A1")).toBe(`<c r="A1"><f>${EMC}(70,50)</f><v>12.5</v></c>`);
    expect(cellXml(made.parts[SHEET]!, "B1")).toBe(`<c r="B1">${cells[1]}</c>`);
    expect(cellXml(made.parts[SHEET]!, "C1")).toBe(`<c r="C1">${cells[2]}</c>`);
    expect(made.summary).toContain("1 formula left as found, since Excel reads no ARRAYFORMULA");
  });
});

describe("a workbook that cannot be converted", () => {
  it("is refused where it is spelled for that host already", async () => {
    const online = await to("online", tiny(GOOD));
    await expect(to("online", online.bytes)).rejects.toThrow("it holds no BOLE formula as Excel stores it");
    await expect(to("excel", tiny(GOOD))).rejects.toThrow("it holds no BOLE formula spelled BOLE_NAME");
  });

  it("is refused where a name of its own is one of the online sheet's functions", async () => {
    const workbook = '<definedNames><definedName name="bole_emc">Yard!$A$1</definedName></definedNames>';
    const what = { sheets: { Yard: row(`<c r="A1"><f>${EMC}(1,2)</f></c>`) }, workbook };
    await expect(toOnline(what)).rejects.toThrow("it gives the name bole_emc");
  });

  // What only calculating cannot do is no hindrance here.
  const unreadable = BAD.filter(([, , complaint]) => !complaint.includes("calculated here"));
  it.each(unreadable)("%s is refused", async (_, make, complaint) => {
    const bytes = Buffer.from(await make());
    for (const host of ["online", "excel"]) {
      const refusal = await to(host, bytes).then(
        () => "",
        (fault: Error) => fault.message,
      );
      expect(refusal).toContain(complaint);
    }
  });
});
