import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { startEngine, type Engine } from "../../../../src/hosts/tryout/engine";
import { recalculated } from "../../../../src/hosts/tryout/file/recalc";
import { cellXml, differences, partsOf, tiny, tinyParts, zipped, type Tiny } from "./tiny";

/** 20 in by 12 ft scales 192 board feet by Doyle: ((20 - 4) / 4)^2 * 12. */
const DOYLE_192 = "_xldudf_BOLE_LOGSCALE(A1,B1,&quot;Doyle&quot;)";
const AT = new Date("2026-03-01T00:00:00Z");
const SHEET = "xl/worksheets/sheet1.xml";

let engine: Engine;
beforeAll(async () => {
  engine = await startEngine();
});
afterAll(() => engine.stop());

async function recalc(what: Tiny) {
  const before = await tiny(what);
  const kept = Uint8Array.from(before);
  const made = await recalculated(before, engine, AT);
  expect(Uint8Array.from(before), "the input stays as it was").toEqual(kept);
  return { ...made, diff: await differences(before, made.bytes), parts: await partsOf(made.bytes) };
}

const row = (cells: string, number = 1) => `<row r="${number}">${cells}</row>`;
const log = '<c r="A1"><v>20</v></c><c r="B1"><v>12</v></c>';

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

  it("leaves a formula alone that takes the one cell of a range in its own row", async () => {
    const cells = [
      `${log}<c r="C1"><f>_xldudf_BOLE_LOGSCALE(_xlfn.SINGLE(A1),B1,"Doyle")</f><v>0</v></c>`,
      '<c r="D1"><f>_xldudf_BOLE_BOARDFEET(1,6,8)*SUM(_xlfn.SINGLE(A1:A2))</f><v>80</v></c>',
    ];
    const { parts, summary } = await recalc({
      sheets: { Logs: row(cells.join("")) + row('<c r="A2"><v>30</v></c>', 2) },
    });
    expect(cellXml(parts[SHEET]!, "C1")).toContain("<v>192</v>");
    expect(cellXml(parts[SHEET]!, "D1")).toContain("<v>80</v>");
    expect(summary).toContain("because it takes one cell of several with @: Logs!D1");
  });

  it("does not take a cell without any value for 0", async () => {
    const cells =
      '<c r="A1"><f>CUBEVALUE(&quot;x&quot;)</f></c><c r="B1"><f>SUM(A1)+_xldudf_BOLE_BOARDFEET(1,6,8)</f></c>';
    const { parts } = await recalc({ sheets: { Logs: row(cells) } });
    expect(cellXml(parts[SHEET]!, "B1")).toContain('t="e"><f>SUM(A1)+_xldudf_BOLE_BOARDFEET(1,6,8)</f><v>#N/A</v>');
  });

  it("reads formulas that were copied down and stand in the file only once", async () => {
    const shared = (address: string, rest: string) => `<c r="${address}">${rest}<v>0</v></c>`;
    const rows = [1, 2, 3].map((at) => {
      const f =
        at === 1
          ? `<f t="shared" ref="C1:C3" si="0">_xldudf_BOLE_LOGSCALE(A1,$B$1,"Doyle")</f>`
          : '<f t="shared" si="0"/>';
      const length = at === 1 ? '<c r="B1"><v>12</v></c>' : "";
      return row(`<c r="A${at}"><v>${16 + 4 * at}</v></c>${length}${shared(`C${at}`, f)}`, at);
    });
    const { parts } = await recalc({ sheets: { Logs: rows.join("") } });
    expect(cellXml(parts[SHEET]!, "C1")).toContain("<v>192</v>");
    expect(cellXml(parts[SHEET]!, "C2")).toBe('<c r="C2"><f t="shared" si="0"/><v>300</v></c>');
    expect(cellXml(parts[SHEET]!, "C3")).toContain("<v>432</v>");
  });

  it("lets a spilled answer grow and shrink, and what points at it with # follow", async () => {
    const spilled = (cells: string, ref: string, more: string) =>
      row(
        `<c r="A1"><v>20</v></c><c r="B1" cm="1"><f t="array" ref="${ref}">${cells}</f><v>1</v></c><c r="D1"><f>SUM(_xlfn.ANCHORARRAY(B1))</f><v>1</v></c>`,
      ) + more;
    const grow = await recalc({
      sheets: {
        Logs: spilled(
          '_xldudf_BOLE_LOGSCALE({20;24;28},12,"Doyle")',
          "B1:B2",
          row('<c r="A2"><v>1</v></c><c r="B2"><v>1</v></c><c r="D2"><v>1</v></c>', 2),
        ),
      },
    });
    expect(cellXml(grow.parts[SHEET]!, "B1")).toBe(
      '<c r="B1" cm="1"><f t="array" ref="B1:B3">_xldudf_BOLE_LOGSCALE({20;24;28},12,"Doyle")</f><v>192</v></c>',
    );
    expect(grow.parts[SHEET]).toContain('<c r="A2"><v>1</v></c><c r="B2"><v>300</v></c><c r="D2">');
    expect(grow.parts[SHEET]).toContain('<row r="3"><c r="B3"><v>432</v></c></row>');
    expect(cellXml(grow.parts[SHEET]!, "D1")).toContain("<v>924</v>");
    const shrink = await recalc({
      sheets: {
        Logs: spilled('_xldudf_BOLE_LOGSCALE(A1,12,"Doyle")', "B1:B2", row('<c r="B2" s="0"><v>1</v></c>', 2)),
      },
    });
    expect(cellXml(shrink.parts[SHEET]!, "B1")).toContain('ref="B1"');
    expect(cellXml(shrink.parts[SHEET]!, "B2")).toBe('<c r="B2" s="0"/>');
    expect(cellXml(shrink.parts[SHEET]!, "D1")).toContain("<v>192</v>");
  });

  it("keeps an older array formula in the block it was typed into", async () => {
    const f = '<f t="array" ref="B1:B2">_xldudf_BOLE_LOGSCALE({20;24;28},12,"Doyle")</f>';
    const { parts } = await recalc({
      sheets: { Logs: row(`<c r="B1">${f}<v>0</v></c>`) + row('<c r="B2"><v>0</v></c>', 2) },
    });
    expect(cellXml(parts[SHEET]!, "B2")).toContain("<v>300</v>");
    expect(parts[SHEET]).not.toContain("432");
  });

  it("keeps the file's value where an answer would need cells that are taken", async () => {
    const f = '<f t="array" ref="A1:A2">_xldudf_BOLE_LOGSCALE({20;24;28},12,"Doyle")</f>';
    const cells =
      row(`<c r="A1" cm="1">${f}<v>5</v></c>`) + row('<c r="A2"><v>6</v></c>', 2) + row('<c r="A3"><v>9</v></c>', 3);
    const { diff, summary } = await recalc({ sheets: { Logs: cells } });
    expect(diff.changed).toEqual([]);
    expect(summary).toContain("its answer needs more free cells than there are: Logs!A1");
  });

  it("calculates TODAY() as the day it was told", async () => {
    const f = "<f>_xldudf_BOLE_BOARDFEET(1,12,1)*0+TODAY()</f>";
    const { parts } = await recalc({ sheets: { Logs: row(`<c r="A1">${f}<v>0</v></c>`) } });
    expect(cellXml(parts[SHEET]!, "A1")).toContain("<v>46082</v>");
  });

  it("finds our functions in the files of programs that write them small, prefix their tags or number no cells", async () => {
    const small = await recalc({
      sheets: { Logs: row(`${log}<c r="C1" t="n"><f aca="false">${DOYLE_192.toLowerCase()}</f><v>1</v></c>`) },
    });
    expect(cellXml(small.parts[SHEET]!, "C1")).toContain("<v>192</v>");
    const bare = await recalc({
      sheets: { Logs: `<row><c><v>20</v></c><c><v>12</v></c><c><f>${DOYLE_192}</f><v>1</v></c></row>` },
    });
    expect(bare.parts[SHEET]).toContain(`<c><f>${DOYLE_192}</f><v>192</v></c>`);
    const whole = tinyParts({ sheets: { Logs: row(`${log}<c r="C1"><f>${DOYLE_192}</f><v>1</v></c>`) } });
    const prefixed = whole[SHEET]!.replace(/<(\/?)(?=[a-z])/g, "<$1x:").replace("xmlns=", "xmlns:x=");
    const { bytes } = await recalculated(await zipped({ ...whole, [SHEET]: prefixed }), engine, AT);
    expect((await partsOf(bytes))[SHEET]).toContain(`<x:c r="C1"><x:f>${DOYLE_192}</x:f><x:v>192</x:v></x:c>`);
  });

  it("says which formulas it cannot follow", async () => {
    const cells = `${log}<c r="C1"><f>${DOYLE_192}</f><v>0</v></c><c r="D1"><f>INDIRECT("C"&amp;1)</f><v>0</v></c>`;
    const { parts, summary } = await recalc({ sheets: { Logs: row(cells) } });
    expect(cellXml(parts[SHEET]!, "D1")).toContain("<v>0</v>");
    expect(summary).toContain("1 formula with INDIRECT or OFFSET may be out of date until Excel calculates: Logs!D1");
  });

  it("takes text in quotes for text", async () => {
    const cells = `${log}<c r="C1"><f>&quot;BOLE.LOGSCALE(1)&quot;&amp;A1</f><v>x</v></c>`;
    await expect(recalc({ sheets: { Logs: row(cells) } })).rejects.toThrow("it holds no BOLE formula");
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
