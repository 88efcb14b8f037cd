import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cellText, declaresDocumentType, elements, escapedCellText, tags } from "../../src/xlsx/xml";

describe("XML", () => {
  it("passes over comments, CDATA and signs within attributes", () => {
    const xml = `<?xml version="1.0"?><a><!-- <b> --><b t=">"/><![CDATA[<c>]]><x:d>e</x:d></a>`;
    expect([...tags(xml)].map(({ name, kind, depth }) => `${kind} ${name} ${depth}`)).toEqual([
      "open a 0",
      "alone b 1",
      "open d 1",
      "close d 1",
      "close a 0",
    ]);
    expect(elements(xml, "d")[0]).toMatchObject({ inside: "e" });
  });
  it("finds a document type behind whatever may stand before it", () => {
    expect(declaresDocumentType('\uFEFF<?xml version="1.0"?>\n<!-- a --><!DOCTYPE a>')).toBe(true);
    expect(declaresDocumentType("<a><!-- <!DOCTYPE a> --></a>")).toBe(false);
  });
  it("takes any text there and back", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string({ unit: "binary" }), fc.constant("a_x000D_b\u0001<&>\"'")), (text) => {
        const held = text.replace(/[\uD800-\uDFFF]/g, "");
        expect(cellText(escapedCellText(held))).toBe(held);
      }),
      { seed: 7 },
    );
  });
});
