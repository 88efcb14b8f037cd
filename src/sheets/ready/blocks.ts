import type { LaidOut, Placed } from "../laid-out";

/** Cells under each other that are alike but for what they hold. */
export interface Block extends Omit<Placed, "content"> {
  contents: (string | number)[];
}

/** The cells of a sheet in as few blocks as possible, for a host where every block is a call. */
export function blocksOf({ cells }: LaidOut): Block[] {
  const blocks: Block[] = [];
  const inOrder = [...cells].sort((a, b) => a.column - b.column || a.row - b.row);
  for (const { content, ...cell } of inOrder) {
    const last = blocks.at(-1);
    if (last && continues(last, cell)) last.contents.push(content);
    else blocks.push({ ...cell, contents: [content] });
  }
  return blocks;
}

function continues(block: Block, cell: Omit<Placed, "content">): boolean {
  const { row, column, look, format, isFormula } = block;
  const follows = cell.column === column && cell.row === row + block.contents.length;
  return follows && cell.look === look && cell.format === format && cell.isFormula === isFormula;
}
