import { freeSheetName } from "../../../sheets/ready/free-name";
import { laidOut } from "../../../sheets/laid-out";
import type { TableSheet } from "../../../sheets/definition";
import { sheetNameOf, sheetPrefixOf } from "../../pane/address";
import { Refusal, type SheetHost } from "../../pane/sheet-host";
import { cellAnswer } from "../../../engine/answers";
import { blockOf, cellsIn, rangeOf, sheetPrefix } from "../../../formula/addresses";
import { blockOfRange } from "./block-of";
import type { Grid } from "./grid";
import { engineSheet } from "./ready-sheet";
import { contentsOf, ownSheet } from "./own-sheet";
import { readerOf } from "./reader";

/** More than that is a slip of the finger, and would hold up the page for minutes. */
const MOST_CELLS = 100_000;

/** The sheet in the page, as the pane reaches into it. It shows no pictures and is handed on to nobody. */
export function gridHost(grid: Grid): SheetHost {
  const book = () => grid.api.getActiveWorkbook() ?? refuse("The spreadsheet is still starting");
  const chosen = () => book().getActiveRange() ?? refuse("Choose one cell of the sheet first");

  async function putIntoChosenCell(formulaAt: (sheetPrefix: string) => string): Promise<string> {
    const cell = book().getActiveSheet().getRange(chosen().getRow(), chosen().getColumn());
    const address = `${cell.getSheetName()}!${cell.getA1Notation()}`;
    const place = { sheet: cell.getSheetName(), row: cell.getRow(), column: cell.getColumn() };
    const there = cellAnswer(readerOf(grid).heldAt(place), () => undefined);
    if (there !== "") refuse(`${address} already holds ${held(there)}. Choose an empty cell`);
    const formula = formulaAt(sheetPrefix(place.sheet));
    cell.setValue({ f: formula });
    return `${address} now holds ${formula}`;
  }

  async function chosenAddress(): Promise<string> {
    return sheetPrefix(chosen().getSheetName()) + rangeOf(blockOfRange(chosen().getRange()));
  }

  async function cellsAt(address: string): Promise<unknown[][]> {
    const prefix = sheetPrefixOf(address);
    const sheet = prefix === "" ? book().getActiveSheet().getSheetName() : sheetNameOf(prefix);
    if (!book().getSheetByName(sheet)) refuse(`There is no sheet ${sheet}`);
    const block = blockOf(address.slice(prefix.length));
    if (cellsIn(block) > MOST_CELLS)
      refuse(`${address} is more than ${MOST_CELLS} cells. Name those that hold something`);
    return contentsOf(grid, sheet, block);
  }

  async function addReadySheet(definition: TableSheet): Promise<string> {
    const taken = book()
      .getSheets()
      .map((sheet) => sheet.getSheetName());
    const name = freeSheetName(definition.title, taken);
    const drawn = laidOut(definition, { sheet: name, table: definition.table }, "cells");
    const added = book().insertSheet(name, { index: taken.length, sheet: engineSheet(drawn) });
    book().setActiveSheet(added);
    grid.api.getFormula().executeCalculation();
    return `Added the sheet ${name}. Its example rows are invented: type over them`;
  }

  return { putIntoChosenCell, chosenAddress, cellsAt, addReadySheet, ...ownSheet(grid) };
}

function refuse(reason: string): never {
  throw new Refusal(reason);
}

function held(answer: Exclude<ReturnType<typeof cellAnswer>, "">): string {
  return typeof answer === "object" ? answer.error : String(answer);
}
