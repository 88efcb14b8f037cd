import type { NewColumn } from "./fit/new-column";
import type { SheetHere } from "./fit/sheet-here";
import type { ChosenCell } from "./this-cell";
import type { TableSheet } from "../../sheets/definition";

/**
 * The spreadsheet beside the pane, as far as the pane reaches into it. What changes something answers in a line what was
 * done, and throws a reason for a person when it could not be done.
 */
export interface SheetHost {
  /** Puts a formula into the chosen cell if that is empty. `Logs!` is the prefix of cells of its sheet. */
  putIntoChosenCell(formulaAt: (sheetPrefix: string) => string): Promise<string>;
  /** The address of the chosen cells, with their sheet. */
  chosenAddress(): Promise<string>;
  /** What the cells at an address hold. Without a sheet the one in front is meant. */
  cellsAt(address: string): Promise<unknown[][]>;
  /** What the sheet in front holds, with the chosen cell on it. */
  sheetHere(): Promise<SheetHere>;
  /** Adds a column of formulas. Every cell that it covers must be empty still; else it is refused and nothing is changed. */
  addColumn(column: NewColumn): Promise<string>;
  addReadySheet(sheet: TableSheet): Promise<string>;
  /** Left out where a sheet cannot show pictures. */
  placePicture?(svg: string, about: string): Promise<string>;
  /** Copies of the sheets with values in place of our formulas. Left out where there is nothing to hand on. */
  copyWithoutBole?(): Promise<string>;
  /** The chosen cell. Left out where the sheet tells of it elsewhere. */
  chosenCell?(): Promise<ChosenCell>;
  /** The cells that a piece of a formula points at, seen from the cell it stands in; nothing where only the sheet knows. */
  cellsOf?(piece: string, from: string): Promise<unknown[][] | undefined>;
  /** Calls back whenever another cell is chosen. Left out where the sheet does not say. */
  whenChosen?(told: () => void): void;
  /** Enters formulas anew that were typed before Bole was loaded. Left out where that cannot happen. */
  enterDeadFormulas?(): Promise<string>;
  /** What the last calls were refused for, the newest first. Left out where the sheet tells it beside the cell. */
  lastRefusals?(): readonly RefusedCall[];
}

/** A call that could not be answered, or not in all its rows. */
export interface RefusedCall {
  name: string;
  given: string;
  error: string;
  message: string;
  rows: number;
}

/** A reason of ours, ready to be read by a person. */
export class Refusal extends Error {}
