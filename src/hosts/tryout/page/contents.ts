import type { ICellData, IColumnData, IRange, IRowData, IStyleData, Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/preset-sheets-core";
import { cellAnswer } from "../../../engine/answers";
import { formatBack } from "../../../engine/workbook/look-back";
import { spills } from "../../../engine/spills";
import { placeOf, type Block } from "../../../formula/addresses";
import type { Held } from "../../../xlsx/held";
import type { CellContents, GridContents, SheetContents, SheetFrame } from "../saving/contents";
import { blockOfRange } from "./block-of";
import type { Grid } from "./grid";

type OpenSheet = NonNullable<ReturnType<NonNullable<ReturnType<Grid["api"]["getActiveWorkbook"]>>["getActiveSheet"]>>;

/** All that the grid holds now: what was typed, what was answered, and how it looks. */
export function gridContents(grid: Grid): GridContents {
  const book = grid.api.getActiveWorkbook();
  const sheets = (book?.getSheets() ?? []).map((sheet) => sheetContents(grid, sheet));
  const names = (book?.getDefinedNames() ?? []).map((one): [string, string] => [
    one.getName(),
    one.getFormulaOrRefString(),
  ]);
  return { sheets, names: Object.fromEntries(names) };
}

function sheetContents(grid: Grid, sheet: OpenSheet): SheetContents {
  const own = sheet.getSheet();
  const styles = grid.api.getActiveWorkbook()!.getWorkbook().getStyles();
  const filled = spilledOf(grid, sheet);
  const cells: CellContents[] = [];
  const looks: string[] = [];
  own.getCellMatrix().forValue((row, column, cell) => {
    const { n, ...style } = styles.getStyleByCell(cell) ?? {};
    const hasStyle = Object.keys(style).length > 0;
    if (hasStyle) looks.push(`${row} ${column} ${JSON.stringify(style)}`);
    const held = heldIn(cell);
    const formula = formulaOf(sheet, row, column, cell);
    if (formula === undefined && (held === null || held === "")) return;
    const format = n?.pattern && n.pattern !== "General" ? formatBack(n.pattern) : undefined;
    const fills = formula === undefined ? undefined : filled.blocks.get(placeOf({ row, column }));
    cells.push({
      ...{ row, column, value: held },
      ...(formula !== undefined && { formula }),
      ...(fills && { fills }),
      ...(format !== undefined && { format }),
      ...(hasStyle && { style: style as IStyleData }),
    });
  });
  const taken = new Set(cells.map(placeOf));
  const spilled = filled.cells.filter((cell) => !taken.has(placeOf(cell)));
  return {
    ...{ id: sheet.getSheetId(), name: sheet.getSheetName(), cells: [...cells, ...spilled] },
    ...{ frame: frameOf(own.getConfig()), looks: looks.join("\n"), hidden: own.isSheetHidden() === 1 },
  };
}

function heldIn(cell: Nullable<ICellData>): Held {
  // Text of several looks is kept as a small document that ends with a line end of its own.
  const written = cell?.p?.body?.dataStream.replace(/\r\n$/, "").replaceAll("\r", "\n");
  const answer = written ?? cellAnswer(cell, () => undefined);
  return typeof answer === "object" ? answer.error : answer;
}

/** A copied formula is kept under a number that it shares with the first. */
function formulaOf(sheet: OpenSheet, row: number, column: number, cell: Nullable<ICellData>): string | undefined {
  if (cell?.f) return cell.f;
  return cell?.si ? sheet.getRange(row, column).getFormula() || undefined : undefined;
}

/** The answers of a sheet that fill more than their own cell, and what stands in those cells. */
function spilledOf({ api, injector }: Grid, sheet: OpenSheet): { blocks: Map<string, Block>; cells: CellContents[] } {
  const unit = api.getActiveWorkbook()?.getId() ?? "";
  const model = injector.get(FormulaDataModel);
  const values = model.getArrayFormulaCellData()[unit]?.[sheet.getSheetId()];
  const blocks = new Map<string, Block>();
  const cells: CellContents[] = [];
  for (const { home, range } of spills(model.getArrayFormulaRange()[unit]?.[sheet.getSheetId()])) {
    const block = blockOfRange(range);
    // An answer that has no room fills nothing, and the engine keeps its size all the same.
    if (heldIn(sheet.getSheet().getCellRaw(home.row, home.column)) === "#SPILL!") continue;
    if (block.top === block.bottom && block.left === block.right) continue;
    blocks.set(placeOf(home), block);
    for (let row = block.top; row <= block.bottom; row++)
      for (let column = block.left; column <= block.right; column++) {
        const value = heldIn(values?.[row]?.[column]);
        if (row !== home.row || column !== home.column) cells.push({ row, column, value, spilled: true });
      }
  }
  return { blocks, cells };
}

function frameOf({
  columnData,
  rowData,
  mergeData,
  freeze,
}: {
  columnData: Record<number, Nullable<Partial<IColumnData>>>;
  rowData: Record<number, Nullable<Partial<IRowData>>>;
  mergeData: IRange[];
  freeze: { xSplit: number; ySplit: number };
}): SheetFrame {
  const widths = Object.entries(columnData).flatMap(([at, one]) =>
    one?.w === undefined ? [] : [[at, one.w] as const],
  );
  // A height that the engine chose itself is left to Excel to choose.
  const heights = Object.entries(rowData).flatMap(([at, one]) =>
    one?.h === undefined || one.ia !== 0 ? [] : [[at, one.h] as const],
  );
  return {
    ...{
      widths: Object.fromEntries(widths),
      heights: Object.fromEntries(heights),
      merges: mergeData.map(blockOfRange),
    },
    frozen: { rows: Math.max(0, freeze.ySplit), columns: Math.max(0, freeze.xSplit) },
  };
}
