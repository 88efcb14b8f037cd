import { asksBole, type Sheet, type Workbook } from "./workbook";
import { attribute, elements, patched, unescaped, withoutAttribute, type Patch } from "../../../xlsx/xml";

/**
 * Takes our functions out of what a table fills into new rows and into its totals, and answers the columns concerned,
 * as Table[Column].
 */
export function withoutBoleColumns({ file, sheetNames, meant }: Workbook, sheet: Sheet, part: string): string[] {
  const xml = file.text(part);
  const table = elements(xml, "table")[0]?.attributes ?? "";
  const tableName = attribute(table, "displayName") ?? attribute(table, "name") ?? "";
  const asks = (formula: string) => asksBole(meant(unescaped(formula), sheetNames.indexOf(sheet.name)));
  const columns: string[] = [];
  const patches = elements(xml, "tableColumn").flatMap((column): Patch[] => {
    const [rows, totals] = ["calculatedColumnFormula", "totalsRowFormula"].map((name) =>
      elements(column.inside, name).filter(({ inside }) => asks(inside)),
    );
    const gone = [...(rows ?? []), ...(totals ?? [])];
    if (gone.length === 0) return [];
    columns.push(`${tableName}[${attribute(column.attributes, "name") ?? ""}]`);
    const cuts = gone.map(({ start, after }) => ({
      start: column.insideStart + start,
      end: column.insideStart + after,
      text: "",
    }));
    return totals?.length ? [...cuts, withoutTotalsFunction(xml, column.start, column.end)] : cuts;
  });
  if (patches.length > 0) file.put(part, patched(xml, patches));
  return columns;
}

/** A column whose totals formula is gone must not promise one. */
function withoutTotalsFunction(xml: string, start: number, end: number): Patch {
  return { start, end, text: withoutAttribute(xml.slice(start, end), "totalsRowFunction") };
}
