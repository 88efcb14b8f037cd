import type { Entry } from "../entry";
import { functionPage } from "./function-page";
import { gradesPage } from "./grades-page";
import { indexPage } from "./index-page";
import { readingPage } from "./reading-page";

/**
 * The reference as file names and HTML: an index by step of the job, how cells are read, where the numbers come from,
 * and a page for each function. Pictures stand inside the pages, so that they take the page's ink by day and by night.
 */
export function referencePages(catalog: readonly Entry[]): Map<string, string> {
  return new Map([
    ["index.html", indexPage(catalog)],
    ["reading.html", readingPage()],
    ["grades.html", gradesPage(catalog)],
    ...catalog.map((entry): [string, string] => [`${entry.name}.html`, functionPage(entry, catalog)]),
  ]);
}
