import type { GridContents } from "../saving/contents";

interface Asked {
  opened: GridContents;
  now: GridContents;
  /** The sheets of the file, by the grid's name for each. */
  fileSheets: ReadonlyMap<string, string>;
  /** Sheets of the file on which rows or columns moved. */
  moved: readonly string[];
}

/**
 * A copy changes cells and adds sheets. What would leave the file's own formulas, names and charts pointing at the wrong
 * cells is refused, and undone by the person who did it.
 */
export function mustBeSavable({ opened, now, fileSheets, moved }: Asked): void {
  if (moved.length > 0)
    throw refusal(
      `rows or columns were put in, taken out or moved on ${moved.join(", ")}, and charts, names and rules of the file would then point at other cells`,
    );
  const names = new Map(now.sheets.map(({ id, name }) => [id, name]));
  const gone = [...fileSheets].filter(([id]) => !names.has(id)).map(([, name]) => name);
  if (gone.length > 0)
    throw refusal(
      `the sheet ${gone.join(", ")} was taken out, and the file has formulas and names that may lean on it`,
    );
  const renamed = [...fileSheets].filter(([id, name]) => names.get(id) !== name);
  if (renamed.length > 0)
    throw refusal(
      `the sheet ${renamed.map(([id, name]) => `${name} is called ${names.get(id)} now`).join(", ")}, and charts and rules of the file know it by its old name`,
    );
  if (inOrder(opened.names) !== inOrder(now.names))
    throw refusal("names that stand for cells were given, changed or moved with their cells");
}

function inOrder(names: Readonly<Record<string, string>>): string {
  return JSON.stringify(Object.entries(names).sort(([one], [other]) => (one < other ? -1 : 1)));
}

function refusal(why: string): Error {
  return new Error(
    `Nothing was saved: ${why}. Undo that with Ctrl+Z, or do it in Excel in the saved copy, and save again.`,
  );
}
