import { addressOf, LAST_COLUMN, LAST_ROW, rangeOf, sheetPrefix } from "../../formula/addresses";
import { escaped } from "../escaped";
import { HEADING, MAIN, OFFICE } from "../namespaces";
import { serialOf } from "../serial";
import { escapedCellText } from "../xml";
import { isFormula, type Cell, type Choices, type Content, type Sheet } from "./book";
import type { StyleList } from "./style-list";

/** The texts that cells share, each once. */
export interface TextList {
  numberOf(text: string): number;
}

/** The relations of a sheet that its part names. */
export interface SheetRelations {
  tables: readonly string[];
  drawing?: string;
}

/** A sheet's part (ECMA-376 part 1, 18.3.1.99), its elements in the order that the standard wants. */
export function sheetPart(sheet: Sheet, styles: StyleList, texts: TextList, relations: SheetRelations): string {
  return (
    `${HEADING}<worksheet xmlns="${MAIN}" xmlns:r="${OFFICE}">` +
    sheetProperties(sheet) +
    `<sheetViews>${view(sheet)}</sheetViews><sheetFormatPr defaultRowHeight="15"/>` +
    columns(sheet) +
    `<sheetData>${rows(sheet, styles, texts)}</sheetData>` +
    listed(
      "mergeCells",
      sheet.merges.map((cells) => `<mergeCell ref="${cells}"/>`),
    ) +
    sheet.rules.map((rule, at) => ruleXml(rule, at, styles)).join("") +
    listed("dataValidations", choicesXml(sheet)) +
    links(sheet) +
    pageXml(sheet) +
    // Keeps the green corner off cells where a number is text on purpose, such as 12% or a setting.
    `<ignoredErrors><ignoredError sqref="A1:AZ2000" numberStoredAsText="1"/></ignoredErrors>` +
    (relations.drawing ? `<drawing r:id="${relations.drawing}"/>` : "") +
    listed(
      "tableParts",
      relations.tables.map((id) => `<tablePart r:id="${id}"/>`),
    ) +
    `</worksheet>`
  );
}

function listed(element: string, items: readonly string[]): string {
  return items.length === 0 ? "" : `<${element} count="${items.length}">${items.join("")}</${element}>`;
}

function sheetProperties({ tab, print }: Sheet): string {
  const fits = print.scale === undefined ? `<pageSetUpPr fitToPage="1"/>` : "";
  return `<sheetPr>${tab ? `<tabColor rgb="FF${tab}"/>` : ""}${fits}</sheetPr>`;
}

function view({ gridlines, frozen: { rows, columns } }: Sheet): string {
  const lines = gridlines ? "" : ` showGridLines="0"`;
  if (rows === 0 && columns === 0) return `<sheetView${lines} workbookViewId="0"/>`;
  const pane = rows > 0 && columns > 0 ? "bottomRight" : rows > 0 ? "bottomLeft" : "topRight";
  const splits = `${columns > 0 ? ` xSplit="${columns}"` : ""}${rows > 0 ? ` ySplit="${rows}"` : ""}`;
  return `<sheetView${lines} workbookViewId="0"><pane${splits} topLeftCell="${addressOf(rows, columns)}" activePane="${pane}" state="frozen"/></sheetView>`;
}

function columns({ widths }: Sheet): string {
  const known = widths.map((width, at) =>
    width ? `<col min="${at + 1}" max="${at + 1}" width="${width}" customWidth="1"/>` : "",
  );
  return known.some(Boolean) ? `<cols>${known.join("")}</cols>` : "";
}

function rows({ cells, heights }: Sheet, styles: StyleList, texts: TextList): string {
  const byRow = new Map<number, Cell[]>([...heights.keys()].map((row) => [row, []]));
  for (const cell of cells.values()) byRow.set(cell.row, [...(byRow.get(cell.row) ?? []), cell]);
  return [...byRow]
    .sort(([a], [b]) => a - b)
    .map(([row, own]) => {
      const height = heights.get(row);
      const inOrder = own.sort((a, b) => a.column - b.column).map((cell) => cellXml(cell, styles, texts));
      return `<row r="${row + 1}"${height ? ` ht="${height}" customHeight="1"` : ""}>${inOrder.join("")}</row>`;
    })
    .join("");
}

function cellXml(cell: Cell, styles: StyleList, texts: TextList): string {
  const { content } = cell;
  const open = `<c r="${addressOf(cell.row, cell.column)}" s="${styles.numberOf(cell.style)}"`;
  if (isFormula(content)) {
    const { type, xml } = valueXml(content.result ?? null);
    const dynamic = content.fills ? ` cm="1"` : "";
    const array = content.fills ? ` t="array" ref="${rangeOf(content.fills)}"` : "";
    return `${open}${type}${dynamic}><f${array}>${escaped(content.formula)}</f>${xml}</c>`;
  }
  const held = typeof content === "object" && content !== null && "leadsTo" in content ? content.text : content;
  if (typeof held === "string") return `${open} t="s"><v>${texts.numberOf(held)}</v></c>`;
  const { type, xml } = valueXml(held);
  return xml ? `${open}${type}>${xml}</c>` : `${open}/>`;
}

/** A value as a formula's answer is written, and every value but a text that stands by itself. */
function valueXml(value: Exclude<Content, object> | Date | { error: string }): { type: string; xml: string } {
  if (value === null) return { type: "", xml: "" };
  if (typeof value === "number") return { type: "", xml: `<v>${value}</v>` };
  if (typeof value === "boolean") return { type: ` t="b"`, xml: `<v>${value ? 1 : 0}</v>` };
  if (typeof value === "string") return { type: ` t="str"`, xml: `<v>${escapedCellText(value)}</v>` };
  if (value instanceof Date) return { type: "", xml: `<v>${serialOf(value)}</v>` };
  return { type: ` t="e"`, xml: `<v>${value.error}</v>` };
}

function ruleXml({ cells, formula, style }: Sheet["rules"][number], at: number, styles: StyleList): string {
  return `<conditionalFormatting sqref="${cells}"><cfRule type="expression" dxfId="${styles.ruleNumberOf(style)}" priority="${at + 1}"><formula>${escaped(formula)}</formula></cfRule></conditionalFormatting>`;
}

/** Cells that offer the same list share one entry. */
function choicesXml({ cells }: Sheet): string[] {
  const byList = new Map<string, { choices: Choices; cells: string[] }>();
  for (const { row, column, choices } of cells.values()) {
    if (!choices) continue;
    const known = byList.get(choices.list) ?? { choices, cells: [] };
    known.cells.push(addressOf(row, column));
    byList.set(choices.list, known);
  }
  return [...byList.values()].map(
    ({ choices: { list, title, question }, cells: own }) =>
      `<dataValidation type="list" errorStyle="warning" allowBlank="1" showErrorMessage="1" errorTitle="${escaped(title)}" error="${escaped(question)}" sqref="${own.join(" ")}"><formula1>${escaped(list)}</formula1></dataValidation>`,
  );
}

function links({ cells }: Sheet): string {
  const leading = [...cells.values()].flatMap(({ row, column, content }) =>
    typeof content === "object" && content !== null && "leadsTo" in content
      ? [
          `<hyperlink ref="${addressOf(row, column)}" location="${escaped(`${sheetPrefix(content.leadsTo)}${content.cell ?? "A1"}`)}" display="${escaped(content.text)}"/>`,
        ]
      : [],
  );
  return leading.length > 0 ? `<hyperlinks>${leading.join("")}</hyperlinks>` : "";
}

/** Margins are inches; paper 1 is US letter. */
function pageXml({ print }: Sheet): string {
  const way = print.landscape ? "landscape" : "portrait";
  const size = print.scale ? `scale="${print.scale}"` : `fitToWidth="1" fitToHeight="${print.onePage ? 1 : 0}"`;
  return (
    `<pageMargins left="0.4" right="0.4" top="0.5" bottom="0.6" header="0.3" footer="0.3"/>` +
    `<pageSetup paperSize="1" orientation="${way}" ${size}/>` +
    `<headerFooter><oddFooter>${escaped(print.footer)}</oddFooter></headerFooter>` +
    breaks("rowBreaks", print.rowBreaks, LAST_COLUMN) +
    breaks("colBreaks", print.columnBreaks, LAST_ROW)
  );
}

/** Rows or columns that begin another page; each break runs across the whole sheet. */
function breaks(element: string, starts: readonly number[] = [], last: number): string {
  if (starts.length === 0) return "";
  const each = starts.map((start) => `<brk id="${start}" max="${last}" man="1"/>`);
  return `<${element} count="${starts.length}" manualBreakCount="${starts.length}">${each.join("")}</${element}>`;
}
