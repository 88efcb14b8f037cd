import { freeSheetName } from "../../../sheets/ready/free-name";
import { isListOfOurs, LISTS } from "../../../sheets/lists";
import type { LaidOut } from "../../../sheets/laid-out";
import type { ListName } from "../../../sheets/definition";

/** A list in the rule itself may be no longer than this, commas and all. */
const LONGEST_INLINE = 255;

/** Where the longer lists stand in sight, for the choices of every ready sheet. */
const LISTS_SHEET = "Bole lists";
const HEADING = "Names that Bole knows";

/** Gives entry cells their names to choose from. Others may still be typed, after a question. */
export async function addChoices(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  choices: LaidOut["choices"],
): Promise<void> {
  for (const list of new Set(choices.map((choice) => choice.list).filter(isListOfOurs))) {
    const source = await sourceOf(list, context);
    for (const { address } of choices.filter((choice) => choice.list === list)) {
      const validation = sheet.getRange(address).dataValidation;
      validation.rule = { list: { inCellDropDown: true, source } };
      validation.errorAlert = {
        showAlert: true,
        style: "Warning",
        title: "Not in the list",
        message: "The list holds the main names; Bole knows more spellings. Keep what you typed?",
      };
    }
  }
}

async function sourceOf(list: ListName, context: Excel.RequestContext): Promise<string> {
  const names = LISTS[list];
  const inline = names.join(",");
  if (inline.length <= LONGEST_INLINE) return inline;
  return `='${await listsSheet(names, context)}'!$A$2:$A$${names.length + 1}`;
}

/** The sheet with a long list: one that stands there already and holds the same names, else a new one at the end. */
async function listsSheet(names: readonly string[], context: Excel.RequestContext): Promise<string> {
  const wanted = [HEADING, ...names];
  const sheets = context.workbook.worksheets;
  sheets.load("items/name");
  await context.sync();
  const candidates = sheets.items
    .filter(({ name }) => name.startsWith(LISTS_SHEET))
    .map((sheet) => ({ name: sheet.name, range: sheet.getRange(`A1:A${wanted.length}`) }));
  for (const { range } of candidates) range.load("values");
  await context.sync();
  const same = candidates.find(({ range }) => wanted.every((name, row) => range.values[row]?.[0] === name));
  if (same) return same.name;
  const name = freeSheetName(
    LISTS_SHEET,
    sheets.items.map((sheet) => sheet.name),
  );
  const range = sheets.add(name).getRange(`A1:A${wanted.length}`);
  range.values = wanted.map((text) => [text]);
  range.format.columnWidth = 180;
  return name;
}
