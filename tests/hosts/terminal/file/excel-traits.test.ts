import { describe, expect, it } from "vitest";
import { startEngine } from "../../../../src/engine/engine";
import { addInId } from "../../../../src/hosts/add-in-id";
import { recalculated } from "../../../../src/hosts/terminal/file/recalc";
import { asExcelSaves, OTHER_ADD_IN, pane, PANES } from "./excel-traits";
import { AT, share, SHEET } from "./sharing";
import { cellXml, differences, partsOf } from "./tiny";

describe("a workbook as Excel itself saves it", () => {
  it("is calculated, and a call that Excel would never read again is entered anew", async () => {
    const engine = await startEngine();
    const before = asExcelSaves();
    const { bytes, summary } = await recalculated(before, engine, AT);
    engine.stop();
    const sheet = (await partsOf(bytes))[SHEET]!;
    expect((await differences(before, bytes)).changed).toEqual([SHEET]);
    expect(cellXml(sheet, "C1")).toBe(
      '<c r="C1" cm="1"><f t="array" ref="C1">_xldudf_BOLE_LOGSCALE(A1,B1,"Doyle")</f><v>192</v></c>',
    );
    expect(cellXml(sheet, "D1")).toContain("<f>_xldudf_BOLE_LOGSCALE(A1,B1,&quot;BOLE.X(&quot;)+1</f>");
    expect(cellXml(sheet, "E1")).toContain("<v>192</v>");
    expect(cellXml(sheet, "F1")).toBe('<c r="F1"><f ca="1">NOW()*0+C1</f><v>192</v></c>');
    expect(summary).toContain("1 formula that Excel would show as #NAME? entered anew: Logs!D1");
  });

  it("is shared without the add-in's own part, so that nobody is asked to load it", async () => {
    const { diff, parts, summary } = await share(asExcelSaves());
    expect(diff.removed).toEqual([
      "xl/webextensions/_rels/taskpanes.xml.rels",
      "xl/webextensions/taskpanes.xml",
      "xl/webextensions/webextension1.xml",
    ]);
    expect(parts["_rels/.rels"]).not.toContain("webextension");
    expect(parts["[Content_Types].xml"]).not.toContain("webextension");
    expect(summary).toContain("no longer asks to load the add-in");
  });

  it("keeps the parts of other add-ins", async () => {
    const { diff, parts } = await share(asExcelSaves([addInId(), OTHER_ADD_IN]));
    expect(diff.removed).toEqual(["xl/webextensions/webextension1.xml"]);
    expect(parts["xl/webextensions/taskpanes.xml"]).toBe(
      `<wetp:taskpanes xmlns:wetp="${PANES}">${pane(2)}</wetp:taskpanes>`,
    );
    expect((await share(asExcelSaves([OTHER_ADD_IN]))).diff.removed).toEqual([]);
  });
});
