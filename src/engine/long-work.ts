/** Up to here the engine calculates a workbook in some seconds. */
const MANY_FORMULAS = 20_000;

/** What a person is told before a workbook is calculated that takes long; nothing where it does not. */
export function longWork(formulas: number): string | undefined {
  if (formulas <= MANY_FORMULAS) return undefined;
  return `The workbook holds ${formulas.toLocaleString("en-US")} formulas: calculating them takes half a minute to some minutes.`;
}
