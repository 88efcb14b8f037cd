import { fixedRangeOf, placeOf, type Block } from "../../../formula/addresses";
import { keyOf } from "./workbook";
import { elements, escaped, patched, unescaped, type Patch } from "../../../xlsx/xml";

const POINTER = /_xlfn\.ANCHORARRAY\(((?:('(?:[^']|'')*'|[\w.\u0080-\uFFFF]+)!)?(\$?[A-Z]{1,3}\$?\d+))\)/gi;

/** `D1#` of a cell that no longer spills becomes the cells that its last answer filled. */
export function withFixedSpills(formula: string, home: string, blocks: ReadonlyMap<string, Block>): string {
  return formula.replace(POINTER, (all, _whole: string, sheet: string | undefined, cell: string) => {
    const name = sheet?.replace(/^'|'$/g, "").replace(/''/g, "'") ?? home;
    const { row, column } = placeOf(cell);
    const block = blocks.get(keyOf(name, row, column));
    return block ? `${sheet ? `${sheet}!` : ""}${fixedRangeOf(block)}` : all;
  });
}

/** The same for the formulas of a part that stand in elements of these names: rules, lists to choose from, names. */
export function withFixedSpillsIn(
  xml: string,
  names: readonly string[],
  home: string,
  blocks: ReadonlyMap<string, Block>,
): { xml: string; count: number } {
  if (blocks.size === 0 || !xml.includes("ANCHORARRAY")) return { xml, count: 0 };
  const patches = names
    .flatMap((name) => elements(xml, name))
    .flatMap(({ inside, insideStart }): Patch[] => {
      const before = unescaped(inside);
      const after = withFixedSpills(before, home, blocks);
      return after === before ? [] : [{ start: insideStart, end: insideStart + inside.length, text: escaped(after) }];
    });
  return { xml: patched(xml, patches), count: patches.length };
}
