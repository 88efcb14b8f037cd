import type { Package } from "./package";
import { declarePart, freePart, relate, relationsOf } from "./relations";
import { DYNAMIC_ARRAY_METADATA } from "./write/dynamic-arrays";
import { attribute, elements } from "./xml";

const METADATA_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml";
/** What a dynamic array is called among the kinds of metadata. */
const DYNAMIC_ARRAYS = "XLDAPR";
/** The number that our own metadata gives the mark. */
const OWN_MARK = "1";

/**
 * The number that marks a cell's formula as a dynamic array in this workbook. A workbook without such marks is given them;
 * where its metadata are of other kinds only, they stay as they are and there is none.
 */
export function dynamicArrayMark(file: Package, workbookPart: string): string | undefined {
  const known = relationsOf(file, workbookPart).find(({ type }) => type === "sheetMetadata");
  if (known && file.has(known.target)) return markIn(file.text(known.target));
  const folder = workbookPart.slice(0, workbookPart.lastIndexOf("/") + 1);
  const free = `${folder}metadata.xml`;
  const part = file.has(free) ? freePart(file, `${folder}metadata`, ".xml") : free;
  file.put(part, DYNAMIC_ARRAY_METADATA);
  declarePart(file, part, METADATA_TYPE);
  relate(file, workbookPart, "sheetMetadata", part);
  return OWN_MARK;
}

/** Marks, kinds and their records are counted: marks and kinds from 1, records from 0. */
function markIn(xml: string): string | undefined {
  const kinds = elements(xml, "metadataType").map(({ attributes }) => attribute(attributes, "name"));
  const kind = kinds.indexOf(DYNAMIC_ARRAYS) + 1;
  const future = elements(xml, "futureMetadata").find(
    ({ attributes }) => attribute(attributes, "name") === DYNAMIC_ARRAYS,
  );
  const growing = elements(future?.inside ?? "", "bk").map(({ inside }) =>
    elements(inside, "dynamicArrayProperties").some(({ attributes }) => attribute(attributes, "fDynamic") === "1"),
  );
  const marks = elements(elements(xml, "cellMetadata")[0]?.inside ?? "", "bk");
  const at = marks.findIndex(({ inside }) =>
    elements(inside, "rc").some(
      ({ attributes }) =>
        Number(attribute(attributes, "t")) === kind && growing[Number(attribute(attributes, "v"))] === true,
    ),
  );
  return at < 0 ? undefined : String(at + 1);
}
