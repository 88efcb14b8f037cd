import { ADD_IN } from "../../../catalog/about/add-in";
import { functionsOf } from "../../../formula/functions";
import { inWorkbook } from "./in-workbook";

/**
 * Enters every formula anew that asks Bole and shows #NAME?. One that was typed before the add-in was loaded keeps that
 * error however often Excel calculates: only entering it heals it.
 */
export function enterDeadFormulas(): Promise<string> {
  return inWorkbook(async (context) => {
    const sheets = context.workbook.worksheets;
    sheets.load("items/name, items/protection/protected");
    await context.sync();
    const used = sheets.items.map((sheet) => ({ sheet, range: sheet.getUsedRangeOrNullObject(true) }));
    for (const { range } of used) range.load("formulas, values");
    await context.sync();
    let mended = 0;
    const left: string[] = [];
    for (const { sheet, range } of used) {
      const dead = range.isNullObject ? [] : deadIn(range.formulas as unknown[][], range.values as unknown[][]);
      if (dead.length === 0) continue;
      if (sheet.protection.protected) {
        left.push(sheet.name);
        continue;
      }
      for (const { row, column, formula } of dead) range.getCell(row, column).formulas = [[formula]];
      mended += dead.length;
    }
    await context.sync();
    return told(mended, left);
  });
}

function deadIn(formulas: unknown[][], values: unknown[][]): { row: number; column: number; formula: string }[] {
  return formulas.flatMap((line, row) =>
    line.flatMap((formula, column) =>
      typeof formula === "string" && functionsOf(ADD_IN, formula).length > 0 && values[row]?.[column] === "#NAME?"
        ? [{ row, column, formula }]
        : [],
    ),
  );
}

function told(mended: number, left: readonly string[]): string {
  const what =
    mended === 0
      ? left.length > 0
        ? "Nothing was entered"
        : "No formula of Bole shows #NAME?"
      : `${mended} ${mended === 1 ? "formula that showed #NAME? was" : "formulas that showed #NAME? were"} entered anew`;
  if (left.length === 0) return what;
  return `${what}. Protected, and left as ${left.length === 1 ? "it is" : "they are"}: ${left.join(", ")}. Unprotect, then try again`;
}
