import { describe, expect, it } from "vitest";
import { DOYLE_192, log, recalculating, row, SHEET } from "./recalculating";
import { cellXml, tinyParts, zipped } from "./tiny";

const { recalc, recalcFile } = recalculating();

describe("recalculating every form in which a file writes formulas", () => {
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
    const { parts } = await recalcFile(await zipped({ ...whole, [SHEET]: prefixed }));
    expect(parts[SHEET]).toContain(`<x:c r="C1"><x:f>${DOYLE_192}</x:f><x:v>192</x:v></x:c>`);
  });

  it("takes text in quotes for text", async () => {
    const cells = `${log}<c r="C1"><f>&quot;BOLE.LOGSCALE(1)&quot;&amp;A1</f><v>x</v></c>`;
    await expect(recalc({ sheets: { Logs: row(cells) } })).rejects.toThrow("it holds no BOLE formula");
  });
});
