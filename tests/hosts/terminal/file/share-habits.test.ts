import { describe, expect, it } from "vitest";
import { elements } from "../../../../src/xlsx/xml";
import { row, SHEET, share, shareTiny } from "./sharing";
import { tinyParts, zipped, type Tiny } from "./tiny";

/* Files with the habits of other writers, and what share adds to them: notes, their drawing and the sheet about the copy. */

const CELL = row('<c r="A1"><f>_xldudf_BOLE_KERFLOSS(1,0.125)</f><v>0.1111111111111111</v></c>');
const VML = {
  v: "urn:schemas-microsoft-com:vml",
  o: "urn:schemas-microsoft-com:office:office",
  x: "urn:schemas-microsoft-com:office:excel",
};

describe("a strict workbook", () => {
  const strict = (what: Tiny) =>
    zipped(
      Object.fromEntries(
        Object.entries(tinyParts(what)).map(([part, xml]) => [
          part,
          xml
            .replaceAll(
              "http://schemas.openxmlformats.org/spreadsheetml/2006/main",
              "http://purl.oclc.org/ooxml/spreadsheetml/main",
            )
            .replaceAll(
              "http://schemas.openxmlformats.org/officeDocument/2006/relationships",
              "http://purl.oclc.org/ooxml/officeDocument/relationships",
            ),
        ]),
      ),
    );

  it("stays strict: what share adds is written in strict words, and nothing in those of old", async () => {
    const { parts, diff } = await share(strict({ sheets: { Logs: CELL } }));
    expect(diff.added).toEqual([
      "xl/comments1.xml",
      "xl/drawings/vmlDrawing1.vml",
      "xl/worksheets/_rels/sheet1.xml.rels",
      "xl/worksheets/sheet2.xml",
    ]);
    for (const [part, xml] of Object.entries(parts))
      expect(xml, part).not.toMatch(/schemas\.openxmlformats\.org\/(?:spreadsheetml|officeDocument)/);
    expect(parts[SHEET]).toContain("<v>0.1111111111111111</v>");
  });
});

describe("a drawing of notes that is there already", () => {
  const drawn = (drawing: string, pointer: string) =>
    shareTiny({
      sheets: { Logs: CELL },
      after: pointer,
      parts: { "xl/drawings/vmlDrawing1.vml": drawing },
      types: '<Default Extension="vml" ContentType="application/vnd.openxmlformats-officedocument.vmlDrawing"/>',
      sheetRelations: [["vmlDrawing", "../drawings/vmlDrawing1.vml"]],
    });
  const POINTER = '<legacyDrawing r:id="rId1"/>';

  it.each([
    ["with the usual prefixes", ["v", "o", "x"]],
    ["with prefixes of its writer's own", ["ns0", "ns1", "ns2"]],
    ["with prefixes that mean something else here", ["o", "x", "v"]],
  ])("%s takes the new shape in, and its list of numbers goes on", async (_, [v, o, x]) => {
    const drawing =
      `<xml xmlns:${v}="${VML.v}" xmlns:${o}="${VML.o}" xmlns:${x}="${VML.x}">` +
      `<${o}:shapelayout ${v}:ext="edit"><${o}:idmap ${v}:ext="edit" data="1"/></${o}:shapelayout>` +
      `<${v}:shape id="_x0000_s1025"><${x}:ClientData ObjectType="Button"/></${v}:shape></xml>`;
    const { parts, diff } = await drawn(drawing, POINTER);
    const made = parts["xl/drawings/vmlDrawing1.vml"]!;
    expect(diff.added).not.toContain("xl/drawings/vmlDrawing2.vml");
    expect(elements(made, "idmap").map(({ attributes }) => attributes)).toEqual([
      expect.stringContaining('data="1,2"'),
    ]);
    expect(elements(made, "shape")).toHaveLength(2);
    expect(elements(made, "ClientData").map(({ attributes }) => attributes.trim())).toEqual([
      'ObjectType="Button"',
      'ObjectType="Note"',
    ]);
    expect(namesOf(made)).toEqual(expect.arrayContaining([`${VML.v} shape`, `${VML.o} idmap`, `${VML.x} ClientData`]));
    expect(namesOf(made).filter((name) => /^undefined/.test(name))).toEqual([]);
  });

  it("is not doubled where the sheet points at it in two ways, for readers of two kinds", async () => {
    const both =
      '<mc:AlternateContent xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006">' +
      `<mc:Choice Requires="v">${POINTER}</mc:Choice><mc:Fallback>${POINTER}</mc:Fallback></mc:AlternateContent>`;
    const { parts, diff } = await drawn(`<xml xmlns:v="${VML.v}" xmlns:o="${VML.o}" xmlns:x="${VML.x}"></xml>`, both);
    expect(diff.added).not.toContain("xl/drawings/vmlDrawing2.vml");
    expect(elements(parts[SHEET]!, "legacyDrawing")).toHaveLength(2);
    expect(elements(parts["xl/drawings/vmlDrawing1.vml"]!, "shape")).toHaveLength(1);
  });
});

/** The elements of a drawing by namespace and name, read by the browser-like rules of prefixes: the nearest declaration counts. */
function namesOf(xml: string): string[] {
  const meanings: Record<string, string>[] = [{}];
  const found: string[] = [];
  for (const [, close, prefix = "", name, attributes = "", alone] of xml.matchAll(
    /<(\/?)(?:([\w.-]+):)?([\w.-]+)((?:"[^"]*"|'[^']*'|[^"'>])*?)(\/?)>/g,
  )) {
    if (close) {
      meanings.pop();
      continue;
    }
    const own = Object.fromEntries(
      [...attributes.matchAll(/\sxmlns:([\w.-]+)="([^"]*)"/g)].map(([, p, address]) => [p!, address!]),
    );
    const here = { ...meanings.at(-1), ...own };
    if (prefix) found.push(`${here[prefix]} ${name}`);
    if (!alone) meanings.push(here);
  }
  return found;
}
