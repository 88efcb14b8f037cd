import { addInId } from "../../../../src/hosts/add-in-id";
import { row } from "./sharing";
import { tiny } from "./tiny";

export const PANES = "http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11";
const EXTENSION = "http://schemas.microsoft.com/office/webextensions/webextension/2010/11";
const RELATION = "http://schemas.microsoft.com/office/2011/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";
export const OTHER_ADD_IN = "11111111-2222-3333-4444-555555555555";

/** The pane of the add-in with this number, as the part that lists panes has it. */
export const pane = (number: number) =>
  `<wetp:taskpane dockstate="right" visibility="0" width="350" row="${number}"><wetp:webextensionref xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships" r:id="rId${number}"/></wetp:taskpane>`;
const extension = (id: string) =>
  `<we:webextension xmlns:we="${EXTENSION}" id="{${id}}"><we:reference id="${id}" version="1.0.0.0" store="developer" storeType="Registry"/><we:alternateReferences/><we:properties><we:property name="customFunctionIdList" value="[&quot;EMC&quot;]"/></we:properties><we:bindings/></we:webextension>`;

/** A workbook as Excel itself saves it with the add-in open: array form, a dead call, an @ call, and the panes of add-ins. */
export function asExcelSaves(addIns = [addInId()]): Uint8Array {
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
