import { list, money, optional, pounds } from "../../cells/read";
import { table, type TableCell } from "../../cells/spread";
import { NoAnswer } from "../../math/errors";
import { tripPlan } from "../../math/haul/trip-plan";

interface Haul {
  weightsLb: number[];
  payloadLb: number;
  tripCost?: number | undefined;
  hireCost?: number | undefined;
}

/**
 * Which logs go on which trip, in as few trips as can be, none over the payload.
 *
 * The logs are counted down the list of weights, without its blanks. All ways to load are tried, so "proven" means that
 * no loading needs fewer trips; where so many logs make that too long, the remark says how many trips no plan can go
 * under. With what a trip costs and what a hired truck that takes all at once would cost, the cheaper is named.
 *
 * @customfunction TRIPPLAN
 * @returns A table: trip, logs, pounds, pounds left, and remarks
 * @example =BOLE.TRIPPLAN({2300;1900;3100;900;1500}, 5000) gives a table of 5 rows
 * @example =BOLE.TRIPPLAN({2300;1900;3100;900;1500}, 5000, 90, 300) gives a table of 8 rows
 * @example =BOLE.TRIPPLAN({2300;5200}, 5000) gives #N/A
 * @caution Log weights are estimates: load by the high bound, and check the first load on a scale. Where each log lies matters too: tongue, axles and tires have limits of their own.
 * @see LOADLEFT
 * @see LOGWEIGHT
 * @words how many trips, loads, trailer loads, which logs together, haul logs, hire a truck, log truck, self loader
 */
export const TRIPPLAN = table(
  {
    /** Weights of the logs, a list. */
    weightsLb: list(pounds),
    /** What a trip may carry. */
    payloadLb: pounds,
    /** Money that one trip costs. */
    tripCost: optional(money),
    /** Money for one hired truck that takes all of them. */
    hireCost: optional(money),
  },
  tripPlanTable,
);

function tripPlanTable({ weightsLb, payloadLb, tripCost, hireCost }: Haul): TableCell[][] {
  if (hireCost !== undefined && tripCost === undefined)
    throw new NoAnswer(`tripcost: wanted what a trip costs, to hold against the hired truck at ${hireCost}, got none`);
  const { trips, fewest } = tripPlan({ weightsLb, payloadLb });
  const rows = trips.map(({ logs, weightLb }, at) => [
    at + 1,
    logs.map((log) => log + 1).join(", "),
    weightLb,
    Math.max(0, payloadLb - weightLb),
  ]);
  const whole = weightsLb.reduce((sum, weight) => sum + weight, 0);
  const proof =
    fewest === trips.length
      ? "Proven: no loading needs fewer trips"
      : `Too many ways to try them all: no plan needs fewer than ${fewest} trips`;
  return [
    ["trip", "logs", "pounds", "pounds left"],
    ...rows,
    ["total", `${weightsLb.length} logs`, whole, trips.length * payloadLb - whole],
    [proof, undefined, undefined, undefined],
    ...costRows(trips.length, tripCost, hireCost),
  ];
}

function costRows(trips: number, tripCost: number | undefined, hireCost: number | undefined): TableCell[][] {
  if (tripCost === undefined) return [];
  const own = ["cost of your own trips", undefined, trips * tripCost, undefined];
  if (hireCost === undefined) return [own];
  const saved = Math.abs(hireCost - trips * tripCost);
  const cheaper =
    saved === 0
      ? "Both cost the same"
      : hireCost > trips * tripCost
        ? "Your own trips are cheaper by"
        : "The hired truck is cheaper by";
  return [own, ["cost of the hired truck", undefined, hireCost, undefined], [cheaper, undefined, saved, undefined]];
}
