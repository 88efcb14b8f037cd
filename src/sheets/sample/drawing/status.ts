import { figure } from "./cells";
import { setLook, type Page } from "./page";
import { SMALL } from "./style";

/** Says in words whether the add-in answers. Excel shows the saved words until the cell is worked out again. */
export function drawStatus(page: Page, address: string): void {
  figure(page, address, '=IFERROR(BOLE.VERSION()&" answers here", "Bole is missing: see the sheet Start here")');
  setLook(page, address, SMALL);
}
