import { columnLetters } from "../../../formula/addresses";
import type { LaidOut } from "../../../sheets/laid-out";
import { FOOTER_IN, MARGINS_IN } from "../../../sheets/paper";

const POINTS_PER_INCH = 72;

/** Sets a sheet up for paper, so that it prints as it is meant to without a person's own settings. */
export function setPages({ table, paper, widths }: LaidOut, { pageLayout, verticalPageBreaks }: Excel.Worksheet): void {
  const { landscape, pageStarts, scale, tableAlone, lastColumn } = paper;
  pageLayout.orientation = landscape ? "Landscape" : "Portrait";
  pageLayout.leftMargin = MARGINS_IN.left * POINTS_PER_INCH;
  pageLayout.rightMargin = MARGINS_IN.right * POINTS_PER_INCH;
  pageLayout.topMargin = MARGINS_IN.top * POINTS_PER_INCH;
  pageLayout.bottomMargin = MARGINS_IN.bottom * POINTS_PER_INCH;
  pageLayout.footerMargin = FOOTER_IN * POINTS_PER_INCH;
  pageLayout.zoom = scale ? { scale } : { horizontalFitToPages: 1 };
  const foot = pageLayout.headersFooters.defaultForAllPages;
  foot.centerFooter = "&A";
  foot.rightFooter = "Page &P of &N";
  pageLayout.setPrintTitleRows(`$${table.headerRow}:$${table.headerRow}`);
  for (const start of pageStarts) verticalPageBreaks.add(`${columnLetters(start)}1`);
  if (tableAlone) pageLayout.setPrintTitleColumns("$A:$A");
  const first = tableAlone ? table.headerRow : 1;
  if (tableAlone || lastColumn < widths.length - 1)
    pageLayout.setPrintArea(`A${first}:${columnLetters(lastColumn)}${table.lastRow}`);
}
