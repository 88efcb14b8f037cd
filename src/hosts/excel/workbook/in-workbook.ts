import { Refusal } from "../../pane/sheet-host";

/** Does something in the workbook; whatever Excel refuses comes out as a reason in plain words. */
export async function inWorkbook<Result>(work: (context: Excel.RequestContext) => Promise<Result>): Promise<Result> {
  if (typeof Excel === "undefined") throw new Refusal("This page is not open inside Excel. Open it from the Home tab");
  try {
    return await Excel.run(work);
  } catch (thrown) {
    if (thrown instanceof Refusal) throw thrown;
    throw new Refusal(reasonFor(thrown));
  }
}

/** Older Excel lacks some of its programming interface. */
export function mustSupport(version: string, what: string): void {
  if (!supports(version)) throw new Refusal(`This Excel is too old for ${what}. Excel on the web can do it`);
}

export function supports(version: string): boolean {
  return Office.context.requirements.isSetSupported("ExcelApi", version);
}

/** Excel's commonest refusals in plain words, any other in its own. */
const REASONS: Readonly<Record<string, string>> = {
  InvalidOperationInCellEditMode: "A cell is still being typed in. Press Enter or Esc there, then try again",
  InvalidSelection: "Choose one cell of a sheet first",
  AccessDenied: "The sheet or the workbook is protected. Unprotect it or choose another",
  ItemNotFound: "There is no such sheet in this workbook",
  InvalidArgument: "Excel knows no such cells or does not take this formula",
};

function reasonFor(thrown: unknown): string {
  const code = typeof thrown === "object" && thrown !== null && "code" in thrown ? String(thrown.code) : "";
  return REASONS[code] ?? `Excel refused: ${thrown instanceof Error ? thrown.message : String(thrown)}`;
}
