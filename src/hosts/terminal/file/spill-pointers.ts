import { fixedRangeOf, type Block } from "../../../formula/addresses";
import { withFixedSpills } from "../../../formula/typed";
import { keyOf } from "./workbook";
import { formulaPatches } from "../../../xlsx/formula-elements";
import { patched } from "../../../xlsx/xml";

/** `D1#` of a cell that no longer spills becomes the cells that its last answer filled. */
export function withFixedSpillsOf(formula: string, home: string, blocks: ReadonlyMap<string, Block>): string {
  return withFixedSpills(formula, (sheet, row, column) => {
    const block = blocks.get(keyOf(sheet ?? home, row, column));
    return block && fixedRangeOf(block);
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
  const patches = formulaPatches(xml, names, (formula) => withFixedSpillsOf(formula, home, blocks));
  return { xml: patched(xml, patches), count: patches.length };
}
