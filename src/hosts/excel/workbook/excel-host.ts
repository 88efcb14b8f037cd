import type { SheetHost } from "../../pane/sheet-host";
import { cellsAt, chosenAddress, putIntoChosenCell } from "./cells";
import { lastRefusals } from "../refusals";
import { cellsOf, chosenCell, whenChosen } from "./chosen-cell";
import { copyWithoutBole } from "./copy";
import { enterDeadFormulas } from "./mend";
import { placePicture } from "./picture";
import { addColumn, sheetHere } from "./own-sheet";
import { addReadySheet } from "./ready-sheet";

/** The workbook that Excel has open. */
export const EXCEL_HOST: SheetHost = {
  putIntoChosenCell,
  chosenAddress,
  cellsAt,
  chosenCell,
  cellsOf,
  whenChosen,
  sheetHere,
  addColumn,
  addReadySheet,
  placePicture,
  copyWithoutBole,
  enterDeadFormulas,
  lastRefusals,
};
