import entries from "../../../catalog/catalog.json";
import { pane } from "../../pane/pane";
import { keepForOffline } from "../offline/start";
import { EXCEL_HOST } from "../workbook/excel-host";

document.getElementById("pane")!.replaceChildren(...pane(entries, EXCEL_HOST));
// Without a network Microsoft's script is missing; the list still serves as a reference.
if (typeof Office !== "undefined") void Office.onReady(followExcelsColours);
keepForOffline();

/** Desktop Excel has colours of its own that the system does not know of. */
function followExcelsColours(): void {
  const theme = Office.context?.officeTheme;
  if (theme) document.documentElement.dataset["theme"] = theme.isDarkTheme ? "dark" : "light";
}
