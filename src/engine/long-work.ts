/** Up to here the engine calculates a workbook in some seconds. */
export const MANY_FORMULAS = 20_000;

/** What a person is told before a large workbook is calculated. */
export function longWork(formulas: number): string {
  return `The workbook holds ${formulas.toLocaleString("en-US")} formulas: calculating them takes half a minute to some minutes.`;
}
