import type { SheetHost } from "../../pane/sheet-host";
import { cellsAt, chosenAddress, putIntoChosenCell } from "./cells";
import { lastRefusals } from "../refusals";
import { cellsOf, chosenCell, whenChosen } from "./chosen-cell";
import { copyWithoutBole } from "./copy";
import { enterDeadFormulas } from "./mend";
import { placePicture } from "./picture";
import { addReadySheet } from "./ready-sheet";

/** The workbook that Excel has open. */
export const EXCEL_HOST: SheetHost = {
  putIntoChosenCell,
  chosenAddress,
  cellsAt,
  chosenCell,
  cellsOf,
  whenChosen,
  addReadySheet,
  placePicture,
  copyWithoutBole,
  enterDeadFormulas,
  lastRefusals,
};
