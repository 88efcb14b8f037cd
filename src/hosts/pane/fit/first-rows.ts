import type { Entry } from "../../../catalog/entry";
import { registry } from "../../../functions/registry";
import { cellsOf } from "../given-cells";
import type { SheetHost } from "../sheet-host";
import type { HeadedBlock } from "./block";
import { isColumn, type Source } from "./column-formula";
import { withUnit } from "./unit-said";

/** Rows whose answers are shown before anything is added. */
const SHOWN = 3;

/** A row of the sheet: what the function reads in it, and what it answers. */
export interface AnsweredRow {
  row: number;
  read: unknown[];
  answer: unknown;
}

/**
 * The first rows with their answers, by the same function that the cells will call. Nothing where only the sheet can work
 * them out.
 */
export async function firstRows(
  entry: Entry,
  sources: readonly Source[],
  block: HeadedBlock,
  host: SheetHost,
): Promise<AnsweredRow[] | undefined> {
  if (sources.some((source) => !isColumn(source) && source.kind === "expression")) return undefined;
  const typed = await Promise.all(sources.map((source) => (isColumn(source) ? undefined : cellsOf(source, host))));
  return block.rows.slice(0, SHOWN).map((row, at) => {
    const given = sources.map((source, i) =>
      isColumn(source) ? [[withUnit(source.column.cells[at], source.said)]] : typed[i],
    );
    const answer = registry[entry.name]!(...given);
    const isOneCell = answer.length === 1 && answer[0]!.length === 1;
    return {
      row,
      read: given.filter((_, i) => isColumn(sources[i]!)).map((cells) => cells![0]![0]),
      answer: isOneCell ? answer[0]![0] : "an answer in several cells, which does not go into one",
    };
  });
}
