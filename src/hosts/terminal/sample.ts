import { readFile } from "node:fs/promises";
import { join } from "node:path";
import { ROOT } from "../tryout/build";
import type { Engine, OpenedWorkbook } from "../../engine/engine";
import { longWork } from "../../engine/long-work";
import { readWorkbook } from "../../engine/workbook/read";
import { addressOf, cellAt } from "../../formula/addresses";

export const SAMPLE = join(ROOT, "assets/bole-sample.xlsx");

/** The workbook to show is not there, or is none. */
export class NoWorkbook extends Error {
  override name = "NoWorkbook";
}

/** The bytes of a workbook file, or what is wrong with it and, of the sample, how to get it back. */
export async function workbookBytes(path: string): Promise<Uint8Array> {
  return readFile(path).catch((fault: NodeJS.ErrnoException) => {
    const why = fault.code === "ENOENT" ? "is not there" : `cannot be read (${fault.code ?? fault.message})`;
    throw new NoWorkbook(`${spoken(path)} ${why}.${remedy(path)}`);
  });
}

/** Opens a workbook file and calculates it, or says what is wrong with it. `tell` hears what takes long; its bytes may be `given`. */
export async function openWorkbook(
  engine: Engine,
  path: string,
  tell: (line: string) => void = () => undefined,
  given?: Uint8Array,
): Promise<OpenedWorkbook> {
  const bytes = given ?? (await workbookBytes(path));
  try {
    const file = readWorkbook(bytes);
    const warning = longWork(file.sheets.flatMap(({ cells }) => cells.filter(({ formula }) => formula)).length);
    if (warning) tell(warning);
    return await engine.calculate(file);
  } catch (fault) {
    throw cannotBeOpened(path, fault);
  }
}

/** What is said of a file that is no workbook, or none that can be worked with. */
export function cannotBeOpened(path: string, fault: unknown): NoWorkbook {
  const why = fault instanceof Error ? fault.message : String(fault);
  return new NoWorkbook(`${spoken(path)} cannot be opened (${why}). Nothing was changed.${remedy(path)}`);
}

function spoken(path: string): string {
  return `The ${path === SAMPLE ? "sample workbook" : "workbook"} ${path}`;
}

function remedy(path: string): string {
  return path === SAMPLE ? " Make it again with: npm run sample" : "";
}

export interface KeyResult {
  label: string;
  figure: string;
  unit: string;
}

/** The figures that the workbook calls its key results: cells that show one of its names that begin with Key_. */
export function keyResults(workbook: OpenedWorkbook): KeyResult[] {
  return workbook.formulaCells().flatMap(({ sheet, address, formula }) => {
    if (!/^=Key_\w+$/.test(formula)) return [];
    const [label, unit] = [workbook.text(sheet, beside(address, -1)), workbook.text(sheet, beside(address, 1))];
    return [{ label, figure: workbook.text(sheet, address), unit }];
  });
}

function beside(address: string, columns: number): string {
  const { row, column } = cellAt(address);
  return addressOf(row, column + columns);
}

/** The figures one under the other, numbers right-aligned. */
export function listed(results: KeyResult[]): string {
  const widest = (texts: string[]) => Math.max(0, ...texts.map((text) => text.length));
  const labels = widest(results.map(({ label }) => label));
  const figures = widest(results.map(({ figure }) => figure));
  return results
    .map(({ label, figure, unit }) => `  ${label.padEnd(labels)}  ${figure.padStart(figures)} ${unit}`.trimEnd())
    .join("\n");
}
