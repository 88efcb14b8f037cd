import type { Priced } from "./price-search";

/**
 * A rule that every set of logs which fills the order keeps: at any prices the logs together are worth what the order is
 * worth, and no log counts for more than that.
 */
export interface SetRule {
  /** What each log counts, by log of the yard. */
  counts: Float64Array;
  needs: number;
  /** The logs by what they take for what they count, cheapest first. */
  order: Int16Array;
  /** What it was made of: the same prices make a rule for any other order. */
  priced: Priced;
}

/** A set of logs to try, with what it takes at the least. */
export interface LogSet {
  logs: number[];
  takes: number;
}

/** The rule that prices make for the pieces wanted; nothing where these are worth nothing. */
export function ruleOf(priced: Priced, wanted: Float64Array, takes: readonly number[]): SetRule | undefined {
  const { prices, worth } = priced;
  let needs = 0;
  prices.forEach((price, piece) => (needs += wanted[piece]! < Infinity ? price * wanted[piece]! : 0));
  if (needs <= 0 || worth.some(Number.isNaN)) return undefined;
  const counts = worth.map((one) => Math.min(one, needs));
  const order = Int16Array.from(counts.keys()).filter((log) => counts[log]! > 0);
  order.sort((a, b) => takes[a]! / counts[a]! - takes[b]! / counts[b]! || a - b);
  return { counts, needs, order, priced };
}

/** A node of the search: which logs are in and out, the rest being free, and the least that any set of it takes. */
interface Node {
  state: Int8Array;
  least: number;
  /** The log to decide next; -1 where the logs that are in keep every rule. */
  next: number;
  /** How many rules it was bounded by. */
  rules: number;
}

const FREE = 0;
const IN = 1;
const OUT = -1;

/** Rounding of a rule's sums. */
const SLACK = 1e-7;

/**
 * Sets of logs by what they take, cheapest first, that no rule forbids: best first, each node bounded by the greatest
 * fractional knapsack of the rules. Rules may be added between two sets.
 */
export interface SetSearch {
  /** The next set; nothing where none is left under the limit, or the steps ran out. */
  next(limit: number): LogSet | undefined;
  addRule(rule: SetRule | undefined): void;
  /** What every set not yet given takes at least. */
  least(): number;
}

export function searchSets(
  logs: readonly number[],
  takes: readonly number[],
  firstRules: readonly SetRule[],
  steps: number,
): SetSearch {
  const rules = [...firstRules];
  const allowed = new Int8Array(takes.length).fill(OUT);
  for (const log of logs) allowed[log] = FREE;
  const heap: Node[] = [];
  let left = steps;
  const open = (state: Int8Array) => {
    const node = boundedNode(state, takes, rules);
    if (node.least < Infinity) push(heap, node);
  };
  open(allowed);

  return {
    addRule: (rule) => void (rule && rules.push(rule)),
    least: () => (heap.length > 0 ? heap[0]!.least : Infinity),
    next(limit) {
      while (heap.length > 0 && left-- > 0) {
        if (heap[0]!.least >= limit) return undefined;
        const node = pop(heap);
        if (node.rules < rules.length) {
          // Rules that came after this node was bounded may raise it, or forbid it.
          const again = boundedNode(node.state, takes, rules);
          if (again.least > node.least + SLACK) {
            if (again.least < Infinity) push(heap, again);
            continue;
          }
          node.next = again.next;
        }
        if (node.next < 0) return setOf(node, takes);
        for (const decided of [IN, OUT]) {
          const state = node.state.slice();
          state[node.next] = decided;
          open(state);
        }
      }
      return undefined;
    },
  };
}

function setOf({ state }: Node, takes: readonly number[]): LogSet {
  const logs = [...state.keys()].filter((log) => state[log] === IN);
  return { logs, takes: logs.reduce((sum, log) => sum + takes[log]!, 0) };
}

/** The greatest knapsack over the rules, and the log that it takes in part, or else last. */
function boundedNode(state: Int8Array, takes: readonly number[], rules: readonly SetRule[]): Node {
  let base = 0;
  state.forEach((decided, log) => (base += decided === IN ? takes[log]! : 0));
  const node: Node = { state, least: base, next: -1, rules: rules.length };
  let most = -1;
  for (const { counts, needs, order } of rules) {
    let need = needs * (1 - SLACK);
    for (let log = 0; log < state.length; log++) if (state[log] === IN) need -= counts[log]!;
    if (need <= 0) continue;
    let more = 0;
    let next = -1;
    for (let i = 0; i < order.length && need > 0; i++) {
      const log = order[i]!;
      if (state[log] !== FREE) continue;
      const share = Math.min(1, need / counts[log]!);
      more += share * takes[log]!;
      need -= counts[log]!;
      next = log;
    }
    if (need > 0) return { ...node, least: Infinity };
    if (more <= most) continue;
    most = more;
    node.next = next;
    node.least = base + more;
  }
  return node;
}

function push(heap: Node[], node: Node): void {
  let at = heap.push(node) - 1;
  while (at > 0) {
    const above = (at - 1) >> 1;
    if (heap[above]!.least <= node.least) break;
    heap[at] = heap[above]!;
    at = above;
  }
  heap[at] = node;
}

function pop(heap: Node[]): Node {
  const first = heap[0]!;
  const last = heap.pop()!;
  if (heap.length === 0) return first;
  let at = 0;
  for (;;) {
    let below = 2 * at + 1;
    if (below >= heap.length) break;
    if (below + 1 < heap.length && heap[below + 1]!.least < heap[below]!.least) below++;
    if (heap[below]!.least >= last.least) break;
    heap[at] = heap[below]!;
    at = below;
  }
  heap[at] = last;
  return first;
}
