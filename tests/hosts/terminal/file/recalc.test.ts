import { describe, expect, it } from "vitest";
import { DOYLE_192, log, recalculating, row, SHEET } from "./recalculating";
import { cellXml } from "./tiny";

const { recalc } = recalculating();

describe("recalculating a workbook", () => {
  it("writes the new value and nothing else of the file", async () => {
    const sheets = {
      Logs: row(`${log}<c r="C1" s="0"><f>${DOYLE_192}</f><v>1</v></c>`),
      Other: row('<c r="A1"><v>1</v></c>'),
    };
    const { parts, diff, summary } = await recalc({ sheets });
    expect(diff).toEqual({ changed: [SHEET], added: [], removed: [] });
    expect(cellXml(parts[SHEET]!, "C1")).toBe(`<c r="C1" s="0"><f>${DOYLE_192}</f><v>192</v></c>`);
    expect(summary).toContain("1 cell changed");
  });

  it("leaves every part alone when all values are right, to the last digits", async () => {
    const cells = `${log}<c r="C1"><f>${DOYLE_192}</f><v>192.00000000001</v></c>`;
    const { diff } = await recalc({ sheets: { Logs: row(cells) } });
    expect(diff).toEqual({ changed: [], added: [], removed: [] });
  });

  it("updates what leans on our cells, over names, tables and sheets, and nothing that does not", async () => {
    const { parts, summary } = await recalc({
      sheets: {
        Logs: row(`${log}<c r="C1"><f>${DOYLE_192}</f><v>0</v></c><c r="D1"><f>A1*1000</f><v>7</v></c>`),
        Sums: row(
          '<c r="A1"><f>Scale*2</f><v>0</v></c><c r="B1"><f>SUM(Logs!A:C)</f><v>0</v></c><c r="C1"><f>A1+1</f><v>0</v></c>',
        ),
      },
      workbook: '<definedNames><definedName name="Scale">Logs!$C$1</definedName></definedNames>',
    });
    expect(cellXml(parts[SHEET]!, "D1")).toContain("<v>7</v>");
    const sums = parts["xl/worksheets/sheet2.xml"]!;
    expect(["A1", "B1", "C1"].map((address) => /<v>(.*)<\/v>/.exec(cellXml(sums, address)!)?.[1])).toEqual([
      "384",
      "224",
      "385",
    ]);
    expect(summary).toContain("3 formulas that lean on them");
  });

  it("says which of the changed cells the file's own values do not explain", async () => {
    const sum = '<c r="D1"><f>C1*2</f><v>77</v></c>';
    const { parts, summary } = await recalc({
      sheets: { Logs: row(`${log}<c r="C1"><f>${DOYLE_192}</f><v>100</v></c>${sum}`) },
    });
    expect(cellXml(parts[SHEET]!, "D1")).toContain("<v>384</v>");
    expect(summary).toMatch(/1 of the changed cells was out of date .* check Logs!D1/);
  });

  it("counts a cell that it cannot calculate with the value in the file", async () => {
    const { parts, summary } = await recalc({
      sheets: {
        Logs: [
          row(
            `${log}<c r="C1"><f>_xldudf_BOLE_LOGSCALE(D1,B1,&quot;Doyle&quot;)</f><v>0</v></c><c r="D1"><f>CUBEVALUE(&quot;x&quot;)</f><v>20</v></c>`,
          ),
          row(
            '<c r="A2"><f>IFERROR(CUBEVALUE(C1),0)</f><v>5</v></c><c r="B2"><f>_xldudf_OTHER_THING(C1)</f><v>6</v></c>',
            2,
          ),
          row('<c r="A3"><f>_xldudf_BOLE_BOARDFEET([1]Sheet1!A1,6,8)</f><v>8</v></c>', 3),
        ].join(""),
      },
    });
    const cells = parts[SHEET]!;
    expect(cellXml(cells, "C1")).toContain("<v>192</v>");
    expect(cellXml(cells, "D1")).toContain("<v>20</v>");
    expect(cellXml(cells, "A2")).toContain("<v>5</v>");
    expect(cellXml(cells, "B2")).toContain("<v>6</v>");
    expect(cellXml(cells, "A3")).toContain("<v>8</v>");
    expect(summary).toContain("it uses CUBEVALUE, which the engine does not know: Logs!A2");
    expect(summary).toContain("1 formula of another add-in kept as found");
    expect(summary).toContain("1 link to another workbook kept");
  });

  it("does not take a cell without any value for 0", async () => {
    const cells =
      '<c r="A1"><f>CUBEVALUE(&quot;x&quot;)</f></c><c r="B1"><f>SUM(A1)+_xldudf_BOLE_BOARDFEET(1,6,8)</f></c>';
    const { parts } = await recalc({ sheets: { Logs: row(cells) } });
    expect(cellXml(parts[SHEET]!, "B1")).toContain('t="e"><f>SUM(A1)+_xldudf_BOLE_BOARDFEET(1,6,8)</f><v>#N/A</v>');
  });

  it("calculates TODAY() as the day it was told", async () => {
    const f = "<f>_xldudf_BOLE_BOARDFEET(1,12,1)*0+TODAY()</f>";
    const { parts } = await recalc({ sheets: { Logs: row(`<c r="A1">${f}<v>0</v></c>`) } });
    expect(cellXml(parts[SHEET]!, "A1")).toContain("<v>46082</v>");
  });

  it("says which formulas it cannot follow", async () => {
    const cells = `${log}<c r="C1"><f>${DOYLE_192}</f><v>0</v></c><c r="D1"><f>INDIRECT("C"&amp;1)</f><v>0</v></c>`;
    const { parts, summary } = await recalc({ sheets: { Logs: row(cells) } });
    expect(cellXml(parts[SHEET]!, "D1")).toContain("<v>0</v>");
    expect(summary).toContain("1 formula with INDIRECT or OFFSET may be out of date until Excel calculates: Logs!D1");
  });

  it("writes the errors of our functions as errors, and text as text", async () => {
    const cells = [
      '<c r="A1"><f>_xldudf_BOLE_LOGSCALE(3,12,"Doyle")</f><v>1</v></c>',
      '<c r="B1"><f>_xldudf_BOLE_FRACTION(8.5)&amp;" &lt;&amp;"</f><v>1</v></c>',
      '<c r="C1" t="e" vm="1"><f>_xldudf_BOLE_BOARDFEET(1,12,1)</f><v>#VALUE!</v></c>',
    ];
    const { parts } = await recalc({ sheets: { Logs: row(cells.join("")) } });
    expect(cellXml(parts[SHEET]!, "A1")).toContain('<c r="A1" t="e">');
    expect(cellXml(parts[SHEET]!, "A1")).toContain("<v>#N/A</v>");
    expect(cellXml(parts[SHEET]!, "B1")).toMatch(/<c r="B1" t="str">.*<v>8-1\/2 &lt;&amp;<\/v>/);
    expect(cellXml(parts[SHEET]!, "C1")).toBe('<c r="C1"><f>_xldudf_BOLE_BOARDFEET(1,12,1)</f><v>1</v></c>');
  });
});
