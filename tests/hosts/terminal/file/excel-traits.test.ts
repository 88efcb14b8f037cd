import { describe, expect, it } from "vitest";
import { startEngine } from "../../../../src/engine/engine";
import { addInId } from "../../../../src/hosts/add-in-id";
import { recalculated } from "../../../../src/hosts/terminal/file/recalc";
import { AT, row, share, SHEET } from "./sharing";
import { cellXml, differences, partsOf, tiny } from "./tiny";

const PANES = "http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11";
const EXTENSION = "http://schemas.microsoft.com/office/webextensions/webextension/2010/11";
const RELATION = "http://schemas.microsoft.com/office/2011/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";
const OTHER_ADD_IN = "11111111-2222-3333-4444-555555555555";

const pane = (number: number) =>
  `<wetp:taskpane dockstate="right" visibility="0" width="350" row="${number}"><wetp:webextensionref xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="rId${number}"/></wetp:taskpane>`;
const extension = (id: string) =>
  `<we:webextension xmlns:we="${EXTENSION}" id="{${id}}"><we:reference id="${id}" version="1.0.0.0" store="developer" storeType="Registry"/><we:alternateReferences/><we:properties><we:property name="customFunctionIdList" value="[&quot;EMC&quot;]"/></we:properties><we:bindings/></we:webextension>`;

/** A workbook as Excel itself saves it with the add-in open: array form, a dead call, an @ call, and the panes of add-ins. */
async function asExcelSaves(...addIns: string[]): Promise<Uint8Array> {
  const cells =
    '<c r="A1"><v>20</v></c><c r="B1"><v>12</v></c>' +
    '<c r="C1" cm="1"><f t="array" ref="C1">_xldudf_BOLE_LOGSCALE(A1,B1,"Doyle")</f><v>0</v></c>' +
    '<c r="D1" t="e"><f ca="1">bole.LOGSCALE(A1,B1,"BOLE.X(")+1</f><v>#NAME?</v></c>' +
    '<c r="E1"><f>_xlfn.SINGLE(_xldudf_BOLE_LOGSCALE(A1,B1,"Doyle"))</f><v>0</v></c>' +
    '<c r="F1"><f ca="1">NOW()*0+C1</f><v>0</v></c>';
  const numbers = addIns.map((_, at) => at + 1);
  return tiny({
    sheets: { Logs: row(cells), Notes: row('<c r="A1"><v>1</v></c>') },
    parts: {
      "_rels/.rels": `<Relationships xmlns="${PACKAGE}"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/><Relationship Id="rId2" Type="${RELATION}/webextensiontaskpanes" Target="xl/webextensions/taskpanes.xml"/></Relationships>`,
      "xl/webextensions/taskpanes.xml": `<wetp:taskpanes xmlns:wetp="${PANES}">${numbers.map(pane).join("")}</wetp:taskpanes>`,
      "xl/webextensions/_rels/taskpanes.xml.rels": `<Relationships xmlns="${PACKAGE}">${numbers.map((at) => `<Relationship Id="rId${at}" Type="${RELATION}/webextension" Target="webextension${at}.xml"/>`).join("")}</Relationships>`,
      ...Object.fromEntries(addIns.map((id, at) => [`xl/webextensions/webextension${at + 1}.xml`, extension(id)])),
    },
    types: numbers
      .map(
        (at) =>
          `<Override PartName="/xl/webextensions/webextension${at}.xml" ContentType="application/vnd.ms-office.webextension+xml"/>`,
      )
      .join(""),
  });
}

describe("a workbook as Excel itself saves it", () => {
  it("is calculated, and a call that Excel would never read again is entered anew", async () => {
    const engine = await startEngine();
    const before = await asExcelSaves(addInId());
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
    const { diff, parts, summary } = await share(await asExcelSaves(addInId()));
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
    const { diff, parts } = await share(await asExcelSaves(addInId(), OTHER_ADD_IN));
    expect(diff.removed).toEqual(["xl/webextensions/webextension1.xml"]);
    expect(parts["xl/webextensions/taskpanes.xml"]).toBe(
      `<wetp:taskpanes xmlns:wetp="${PANES}">${pane(2)}</wetp:taskpanes>`,
    );
    expect((await share(await asExcelSaves(OTHER_ADD_IN))).diff.removed).toEqual([]);
  });
});
