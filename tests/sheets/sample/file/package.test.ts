import { describe, expect, it } from "vitest";
import { validateXML } from "xmllint-wasm";
import { formulas, parts, tables, withoutText } from "./sample-file";

/** Functions that change by themselves would make Excel work the file out anew on opening. */
const VOLATILE = /\b(?:TODAY|NOW|RAND|RANDBETWEEN|RANDARRAY|OFFSET|INDIRECT|CELL|INFO)\(/;

describe("the parts of the sample workbook's file", () => {
  it("is well-formed XML in every part", async () => {
    const anything = `<xs:schema xmlns:xs="http://www.w3.org/2001/XMLSchema"><xs:element name="anything"/></xs:schema>`;
    const { errors } = await validateXML({
      xml: [...parts].map(([fileName, contents]) => ({ fileName: fileName.replace(/\W/g, "_"), contents })),
      schema: { fileName: "anything.xsd", contents: anything },
    });
    expect(errors.filter(({ rawMessage }) => / parser (?:error|warning) /.test(rawMessage))).toEqual([]);
    expect(errors.length, "the reader did look at every part").toBeGreaterThanOrEqual(parts.size);
  });

  it("has a part behind every relationship, and a content type for every part", () => {
    const types = parts.get("[Content_Types].xml")!;
    for (const [path, xml] of parts) {
      if (!path.endsWith(".rels")) {
        const known =
          types.includes(`PartName="/${path}"`) || new RegExp(`Extension="${path.split(".").at(-1)}"`).test(types);
        expect(known || path === "[Content_Types].xml", path).toBe(true);
        continue;
      }
      const folder = path.replace(/_rels\/[^/]*$/, "");
      for (const [, target = ""] of xml.matchAll(/Target="([^"]*)"/g)) {
        const file = target.startsWith("/") ? target.slice(1) : new URL(target, `file:///${folder}`).pathname.slice(1);
        expect(parts.has(file), `${path}: ${target}`).toBe(true);
      }
    }
    // and no table that belongs to no sheet
    expect([...parts.keys()].filter((path) => path.startsWith("xl/tables/"))).toHaveLength(tables.length);
  });

  it("carries the part that dynamic arrays need", () => {
    expect(parts.get("xl/metadata.xml")).toMatch(/<metadataType name="XLDAPR".*fDynamic="1".*<cellMetadata count="1">/);
    expect(parts.get("[Content_Types].xml")).toContain('PartName="/xl/metadata.xml"');
    expect(parts.get("xl/_rels/workbook.xml.rels")).toContain('Target="metadata.xml"');
  });

  it("holds nothing that makes Excel work it all out anew on opening", () => {
    expect(formulas.filter(({ formula }) => VOLATILE.test(withoutText(formula)))).toEqual([]);
    expect(parts.get("xl/workbook.xml")).toContain('<calcPr calcId="191029"/>');
    expect(parts.has("xl/calcChain.xml")).toBe(false);
  });
});
