/** A column of a linear programme: its cost, and its figures in the rows where it has any. */
export interface Column {
  cost: number;
  rows: readonly number[];
  figures: readonly number[];
}

/** The least cost at which all rows are met, by columns in amounts of 0 or more. */
export interface LinearProgramme {
  /** Adds a column, and gives its place. */
  add(column: Column): number;
  /** Finds the least cost, going on from where it stood, and gives the price of every row. */
  solve(): Float64Array;
  /** How much of each column is taken. */
  amounts(): Float64Array;
}

/** Reduced costs nearer to nought than this are nought. */
const NOUGHT = 1e-9;
/** Right-hand sides are moved apart by so little, against going round in circles. */
const DISTURBED = 1e-7;
/** After so many steps without a gain the first column that may enter does, which never goes round in circles. */
const PATIENCE = 40;
/** Steps that no programme of this size takes; a safeguard. */
const MOST_STEPS = 4000;

/**
 * A revised simplex with an explicit inverse. It starts from one column for each row, with a 1 there.
 *
 * @source plain arithmetic: G. B. Dantzig's simplex method with R. G. Bland's rule against circling
 */
export function linearProgramme(wanted: readonly number[], startCosts: readonly number[]): LinearProgramme {
  const size = wanted.length;
  const columns: Column[] = startCosts.map((cost, row) => ({ cost, rows: [row], figures: [1] }));
  const basis = Int32Array.from(wanted, (_, row) => row);
  const inBasis: boolean[] = startCosts.map(() => true);
  const inverse = Float64Array.from({ length: size * size }, (_, at) => (at % (size + 1) === 0 ? 1 : 0));
  const held = Float64Array.from(wanted, (amount, row) => amount + (DISTURBED * (row + 1)) / size);

  const pricesNow = (): Float64Array => {
    const prices = new Float64Array(size);
    for (let at = 0; at < size; at++) {
      const cost = columns[basis[at]!]!.cost;
      if (cost !== 0) for (let row = 0; row < size; row++) prices[row]! += cost * inverse[at * size + row]!;
    }
    return prices;
  };

  const entering = (prices: Float64Array, first: boolean): number => {
    let best = 0;
    let at = -1;
    for (let column = 0; column < columns.length; column++) {
      if (inBasis[column]) continue;
      const { cost, rows, figures } = columns[column]!;
      let reduced = cost;
      for (let i = 0; i < rows.length; i++) reduced -= prices[rows[i]!]! * figures[i]!;
      if (reduced >= best || reduced > -NOUGHT * (1 + Math.abs(cost))) continue;
      best = reduced;
      at = column;
      if (first) break;
    }
    return at;
  };

  const direction = ({ rows, figures }: Column): Float64Array => {
    const along = new Float64Array(size);
    for (let at = 0; at < size; at++)
      for (let i = 0; i < rows.length; i++) along[at]! += inverse[at * size + rows[i]!]! * figures[i]!;
    return along;
  };

  const leaving = (along: Float64Array): number => {
    let least = Infinity;
    let at = -1;
    for (let row = 0; row < size; row++) {
      if (along[row]! <= 1e-9) continue;
      const ratio = Math.max(0, held[row]!) / along[row]!;
      if (ratio < least || (ratio === least && basis[row]! < basis[at]!)) {
        least = ratio;
        at = row;
      }
    }
    return at;
  };

  const exchange = (column: number, along: Float64Array, out: number): number => {
    const pivot = along[out]!;
    const amount = Math.max(0, held[out]!) / pivot;
    for (let row = 0; row < size; row++) inverse[out * size + row]! /= pivot;
    for (let at = 0; at < size; at++) {
      const factor = along[at]!;
      if (at === out || factor === 0) continue;
      held[at]! -= amount * factor;
      for (let row = 0; row < size; row++) inverse[at * size + row]! -= factor * inverse[out * size + row]!;
    }
    held[out] = amount;
    inBasis[basis[out]!] = false;
    inBasis[column] = true;
    basis[out] = column;
    return amount;
  };

  return {
    add(column) {
      inBasis.push(false);
      return columns.push(column) - 1;
    },
    solve() {
      let idle = 0;
      for (let step = 0; step < MOST_STEPS; step++) {
        const prices = pricesNow();
        const column = entering(prices, idle > PATIENCE);
        if (column < 0) return prices;
        const along = direction(columns[column]!);
        const out = leaving(along);
        if (out < 0) return prices;
        idle = exchange(column, along, out) > DISTURBED ? 0 : idle + 1;
      }
      return pricesNow();
    },
    amounts() {
      const amounts = new Float64Array(columns.length);
      basis.forEach((column, row) => (amounts[column] = Math.max(0, held[row]!)));
      return amounts;
    },
  };
}
