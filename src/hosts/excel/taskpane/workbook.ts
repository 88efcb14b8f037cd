/** All that the pane does in the workbook. Each says in one line what went wrong, in words for a person. */

/** Puts a formula into the chosen cell if that is empty, and answers where it went. */
export function putIntoChosenCell(formulaAt: (sheetPrefix: string) => string): Promise<string> {
  return inWorkbook(async (context) => {
    const cell = context.workbook.getSelectedRange().getCell(0, 0);
    cell.load("address, formulas");
    await context.sync();
    const there: unknown = cell.formulas[0]?.[0];
    if (there !== "") throw new Refusal(`${cell.address} already holds ${String(there)}. Choose an empty cell`);
    const formula = formulaAt(sheetPrefixOf(cell.address));
    cell.formulas = [[formula]];
    await context.sync();
    return `${cell.address} now holds ${formula}`;
  });
}

/** The address of the chosen cells, with their sheet. */
export function chosenAddress(): Promise<string> {
  return inWorkbook(async (context) => {
    const range = context.workbook.getSelectedRange();
    range.load("address");
    await context.sync();
    return range.address;
  });
}

/** What the cells at an address hold. Without a sheet the one in front is meant. */
export function cellsAt(address: string): Promise<unknown[][]> {
  return inWorkbook(async (context) => {
    const prefix = sheetPrefixOf(address);
    const sheets = context.workbook.worksheets;
    const sheet = prefix === "" ? sheets.getActiveWorksheet() : sheets.getItem(sheetNameOf(prefix));
    const range = sheet.getRange(address.slice(prefix.length));
    range.load("values");
    await context.sync();
    return range.values;
  });
}

/** `Logs!` of `Logs!B4`; nothing of `B4`. */
function sheetPrefixOf(address: string): string {
  return address.slice(0, address.lastIndexOf("!") + 1);
}

function sheetNameOf(prefix: string): string {
  const name = prefix.slice(0, -1);
  return name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name;
}

/** A reason of ours, ready to be read by a person. */
class Refusal extends Error {}

async function inWorkbook<Result>(work: (context: Excel.RequestContext) => Promise<Result>): Promise<Result> {
  if (typeof Excel === "undefined") throw new Refusal("This page is not open inside Excel. Open it from the Home tab");
  try {
    return await Excel.run(work);
  } catch (thrown) {
    if (thrown instanceof Refusal) throw thrown;
    throw new Refusal(reasonFor(thrown));
  }
}

/** Excel's commonest refusals in plain words, any other in its own. */
const REASONS: Readonly<Record<string, string>> = {
  InvalidOperationInCellEditMode: "A cell is still being typed in. Press Enter or Esc there, then try again",
  InvalidSelection: "Choose one cell of a sheet first",
  AccessDenied: "This sheet is protected. Unprotect it or choose another",
  ItemNotFound: "There is no such sheet in this workbook",
  InvalidArgument: "Excel knows no such cells or does not take this formula",
};

function reasonFor(thrown: unknown): string {
  const code = typeof thrown === "object" && thrown !== null && "code" in thrown ? String(thrown.code) : "";
  return REASONS[code] ?? `Excel refused: ${thrown instanceof Error ? thrown.message : String(thrown)}`;
}
