/** A workbook or a path that is not worked on, with the reason in one line. */
export class Refused extends Error {
  override name = "Refused";
}
