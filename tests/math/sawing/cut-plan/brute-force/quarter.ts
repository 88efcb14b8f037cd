import type { SmallLog } from "../small-logs";
import type { Product, Sawyer } from "./sawyer";

/** Four quarters, each sawn off one face or the other in every order. */
export function quarterWorth(log: SmallLog, sawyer: Sawyer): number {
  const { g } = log;
  const { products, kerfSteps, halfUp, startOf, worthOf } = sawyer;
  const corner = Math.max(kerfSteps * g, log.heart) / 2;
  const slope = Math.tan((log.minRing * Math.PI) / 180);

  /** A board off a face: from x on, or from where its rings stand steep enough, to where its outer face leaves the log. */
  const boardOff = (product: Product, x: number, y: number) => {
    const outer = y + product.thickSteps * g;
    const left = Math.max(x, slope * outer);
    return worthOf(product, (length) => {
      const inside = halfUp(startOf(length)) ** 2 - outer ** 2;
      return inside > 0 ? Math.sqrt(inside) - left : 0;
    });
  };

  /** What is left of the quarter is worth, so many steps being off either face. */
  const remaining = (i: number, j: number): number => {
    let best = 0;
    for (const product of products) {
      const drop = product.thickSteps + kerfSteps;
      const offA = boardOff(product, corner + i * g, corner + j * g);
      if (offA > 0) best = Math.max(best, offA + remaining(i, j + drop));
      const offB = boardOff(product, corner + j * g, corner + i * g);
      if (offB > 0) best = Math.max(best, offB + remaining(i + drop, j));
    }
    return best;
  };
  return 4 * remaining(0, 0);
}
