import type { Block } from "../../../formula/addresses";
import type { Reference } from "../../../formula/references";
import { keyOf } from "./workbook";

/** A calculating cell, as far as it matters who leans on whom. */
export interface Node {
  sheet: string;
  /** The cells that its answer fills. */
  block: Block;
  references: readonly Reference[];
}

/** Up to this many cells a reference is kept cell by cell. */
const FEW_CELLS = 64;

interface WideReference {
  block: Block;
  from: Node[];
}

/** Every node that leans on one of the starting nodes, over however many steps; the starting ones are not among them. */
export function dependentsOf<T extends Node>(start: readonly T[], all: readonly T[]): T[] {
  const { narrow, wide } = indexOf(all);
  const reached = new Set<Node>(start);
  const open: Node[] = [...start];
  const reach = (nodes: readonly Node[] | undefined) => {
    for (const node of nodes ?? []) if (!reached.has(node)) open.push((reached.add(node), node));
  };
  for (let node = open.pop(); node; node = open.pop()) {
    const { sheet, block } = node;
    for (let row = block.top; row <= block.bottom; row++)
      for (let column = block.left; column <= block.right; column++) {
        reach(narrow.get(keyOf(sheet, row, column)));
        narrow.delete(keyOf(sheet, row, column));
      }
    const left = wide.get(sheet.toLowerCase());
    if (!left) continue;
    for (const [key, reference] of left)
      if (touch(reference.block, block)) {
        reach(reference.from);
        left.delete(key);
      }
  }
  const starting = new Set<Node>(start);
  return all.filter((node) => reached.has(node) && !starting.has(node));
}

function indexOf(all: readonly Node[]) {
  const narrow = new Map<string, Node[]>();
  const wide = new Map<string, Map<string, WideReference>>();
  for (const node of all)
    for (const { sheet, block } of node.references) {
      if ((block.bottom - block.top + 1) * (block.right - block.left + 1) > FEW_CELLS) {
        const onSheet = wide.get(sheet.toLowerCase()) ?? new Map<string, WideReference>();
        wide.set(sheet.toLowerCase(), onSheet);
        const key = `${block.top} ${block.left} ${block.bottom} ${block.right}`;
        const known = onSheet.get(key);
        if (known) known.from.push(node);
        else onSheet.set(key, { block, from: [node] });
        continue;
      }
      for (let row = block.top; row <= block.bottom; row++)
        for (let column = block.left; column <= block.right; column++) {
          const key = keyOf(sheet, row, column);
          const known = narrow.get(key);
          if (known) known.push(node);
          else narrow.set(key, [node]);
        }
    }
  return { narrow, wide };
}

function touch(one: Block, other: Block): boolean {
  return one.top <= other.bottom && other.top <= one.bottom && one.left <= other.right && other.left <= one.right;
}
