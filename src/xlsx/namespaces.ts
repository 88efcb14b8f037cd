import type { Package } from "./package";

/** How the parts of a workbook file begin, and whose words they are written in. */
export const HEADING = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
export const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** The same words of a workbook that keeps to the standard's strict form (ISO/IEC 29500-1, without the forms of old). */
const STRICT = {
  main: "http://purl.oclc.org/ooxml/spreadsheetml/main",
  office: "http://purl.oclc.org/ooxml/officeDocument/relationships",
};

/** The words a workbook is written in: what is added to a strict one is strict, since a reader takes no mixture. */
export function wordsOf(file: Package): { main: string; office: string } {
  const isStrict = file.has("_rels/.rels") && file.text("_rels/.rels").includes(`"${STRICT.office}/`);
  return isStrict ? STRICT : { main: MAIN, office: OFFICE };
}
