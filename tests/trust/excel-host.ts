import type { Page } from "playwright-core";
import { figuresOf, logRow, PRICE_PER_FOOT } from "./log-book";

/** What one call hands over for each argument: a column of cells, or one cell for all rows. */
type Given = { name: string; columns: unknown[][] };

export interface HostAnswers {
  /** Scale, weight and price of every row, in that order; an error by its name. */
  figures: unknown[][];
  /** Milliseconds in the page for each of the three. */
  tookMs: number[];
}

/** The three figures of every log, by the functions as the Excel host wraps them, so many rows a call. */
export async function answersInExcelHost(page: Page, rows: number, rowsACall: number): Promise<HostAnswers> {
  const logs = Array.from({ length: rows }, (_, at) => logRow(at));
  const scales = logs.map((log) => (figuresOf(log)[0] === 0 ? null : figuresOf(log)[0]));
  const asked: Given[] = [
    { name: "LOGSCALE", columns: [logs.map((log) => log.smallIn), logs.map((log) => log.lengthFt), ["Doyle"]] },
    {
      name: "LOGWEIGHT",
      columns: [
        logs.map((log) => log.species),
        logs.map((log) => log.smallIn),
        logs.map((log) => log.largeIn),
        logs.map((log) => log.lengthFt),
      ],
    },
    // A blank row's price is blank too: a price without a quantity is refused.
    { name: "LINEAMOUNT", columns: [scales, scales.map((scale) => (scale === null ? null : PRICE_PER_FOOT))] },
  ];
  const answers: { column: unknown[]; tookMs: number }[] = [];
  for (const { name, columns } of asked)
    answers.push(await page.evaluate(calledInPage, { name, columns, rows, rowsACall }));
  return { figures: answers.map(({ column }) => column), tookMs: answers.map(({ tookMs }) => tookMs) };
}

/** Runs in the page: Excel hands over blocks of cells and its own invocation object behind them. */
function calledInPage({ name, columns, rows, rowsACall }: Given & { rows: number; rowsACall: number }) {
  const { mappings } = (
    CustomFunctions as unknown as { _association: { mappings: Record<string, (...cells: unknown[]) => unknown[][]> } }
  )._association;
  const formula = mappings[name]!;
  const calls: unknown[][] = [];
  for (let from = 0; from < rows; from += rowsACall)
    calls.push(
      columns.map((column) =>
        column.length === 1 ? [[column[0]]] : column.slice(from, from + rowsACall).map((cell) => [cell]),
      ),
    );
  const answers: unknown[][][] = [];
  const started = performance.now();
  for (const call of calls)
    try {
      answers.push(formula(...call, { functionName: name, address: "Sheet1!A1" }));
    } catch (thrown) {
      // An answer of one error is thrown; Excel shows it in the cell.
      answers.push([[thrown]]);
    }
  const tookMs = performance.now() - started;
  const column = answers.flat().map((row) => {
    const cell = row[0];
    return typeof cell === "object" && cell !== null && "code" in cell ? cell.code : cell;
  });
  return { column, tookMs };
}
