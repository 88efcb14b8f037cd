import type { Entry } from "../../../catalog/entry";
import { registry } from "../../../functions/registry";
import { cellsOf } from "../given-cells";
import type { SheetHost } from "../sheet-host";
import type { HeadedBlock } from "./block";
import { isColumn, type Source } from "./column-formula";
import { withUnit } from "./unit-said";

/** Rows whose answers are shown before anything is added. */
const SHOWN = 3;

/**
 * The first rows with what the function reads in them and what it answers, by the same function that the cells will call.
 * Nothing where only the sheet can work it out.
 */
export async function firstRows(
  entry: Entry,
  sources: readonly Source[],
  block: HeadedBlock,
  host: SheetHost,
): Promise<unknown[][] | undefined> {
  if (sources.some((source) => !isColumn(source) && source.kind === "expression")) return undefined;
  const typed = await Promise.all(sources.map((source) => (isColumn(source) ? undefined : cellsOf(source, host))));
  return block.rows.slice(0, SHOWN).map((row, at) => {
    const given = sources.map((source, i) =>
      isColumn(source) ? [[withUnit(source.column.cells[at], source.said)]] : typed[i],
    );
    const answer = registry[entry.name]!(...given);
    const read = given.filter((_, i) => isColumn(sources[i]!)).map((cells) => cells![0]![0]);
    const isOneCell = answer.length === 1 && answer[0]!.length === 1;
    return [row + 1, ...read, isOneCell ? answer[0]![0] : "answers in several cells"];
  });
}
