import { mustBeAbove, mustBeBetween, NoAnswer, short } from "../errors";
import { atLeastTrips } from "./least-trips";

/** More logs than this are no haul of a small mill, and more text than a cell should hold. */
const MOST_LOGS = 500;

/** How many ways to fill a trip are tried before the best plan so far is taken. */
const MOST_STEPS = 60_000;

/** A weight in metric may miss a whole pound in the last binary digit. */
export const HAIR_LB = 1e-6;

/** Logs on one trip, by their places in the list. */
export interface Trip {
  logs: number[];
  weightLb: number;
}

export interface TripPlan {
  trips: Trip[];
  /** No plan can have fewer. Where it is as many as the trips, the plan is proven. */
  fewest: number;
}

/**
 * Which logs go on which trip, so that no trip is over the payload and the trips are as few as can be.
 *
 * The heaviest log left starts each trip, and all ways to fill the trip up are tried, as long as the payload left empty
 * so far would still let the others fit. Where that takes too long the best plan found stands, with the number of trips
 * that no plan can go under.
 *
 * @formula by search: the fewest trips with the sum of each at most the payload
 * @source plain arithmetic: bin packing, by trying all fillings
 * @range 1 to 500 logs, each at most the payload
 */
export function tripPlan({ weightsLb, payloadLb }: { weightsLb: readonly number[]; payloadLb: number }): TripPlan {
  mustBeAbove(0, payloadLb, "payload (lb)");
  mustBeBetween(1, MOST_LOGS, weightsLb.length, "number of logs");
  for (const [at, weightLb] of weightsLb.entries())
    if (!(weightLb <= payloadLb + HAIR_LB))
      throw new NoAnswer(
        `weight of log ${at + 1} (lb): wanted up to the payload, ${short(payloadLb)}, got ${short(weightLb)}`,
      );
  const heaviestFirst = weightsLb.map((_, at) => at).sort((a, b) => weightsLb[b]! - weightsLb[a]! || a - b);
  const sorted = heaviestFirst.map((at) => weightsLb[at]!);
  const { filled, fewest } = fewestTrips(sorted, payloadLb);
  const trips = filled.map((places) => ({
    logs: places.map((place) => heaviestFirst[place]!).sort((a, b) => a - b),
    weightLb: places.reduce((sum, place) => sum + sorted[place]!, 0),
  }));
  return { trips: trips.sort((a, b) => b.weightLb - a.weightLb || a.logs[0]! - b.logs[0]!), fewest };
}

/** Tries to do with as few trips as no plan can go under, then with one more, until the quick plan is as good. */
function fewestTrips(weights: readonly number[], payloadLb: number): { filled: number[][]; fewest: number } {
  const quick = eachWhereItFitsBest(weights, payloadLb);
  let fewest = atLeastTrips(weights, payloadLb);
  const search = { steps: 0 };
  for (let trips = fewest; trips < quick.length; trips++) {
    const found = packedInto(trips, weights, payloadLb, search);
    if (found) return { filled: found, fewest };
    if (search.steps > MOST_STEPS) continue;
    fewest = trips + 1;
  }
  return { filled: quick, fewest };
}

/** A good plan at once: each log, the heaviest first, on the trip that it leaves least room on. */
function eachWhereItFitsBest(weights: readonly number[], payloadLb: number): number[][] {
  const trips: number[][] = [];
  const rooms: number[] = [];
  weights.forEach((weight, place) => {
    let best = -1;
    rooms.forEach((room, trip) => {
      if (weight <= room + HAIR_LB && (best < 0 || room < rooms[best]!)) best = trip;
    });
    if (best < 0) best = trips.push([]) - 1;
    trips[best]!.push(place);
    rooms[best] = (rooms[best] ?? payloadLb) - weight;
  });
  return trips;
}

/** The logs on so many trips, or undefined where they do not go, or the search is at its end. */
function packedInto(
  trips: number,
  weights: readonly number[],
  payloadLb: number,
  search: { steps: number },
): number[][] | undefined {
  const free = weights.map(() => true);
  const filled: number[][] = [];
  const total = weights.reduce((sum, weight) => sum + weight, 0);

  /** Starts the next trip with the heaviest log left. `spareLb` may still be left empty in all. */
  function nextTrip(spareLb: number): boolean {
    const first = free.indexOf(true);
    if (first < 0) return true;
    if (filled.length === trips) return false;
    free[first] = false;
    const logs = [first];
    filled.push(logs);
    if (fillUp(logs, first + 1, payloadLb - weights[first]!, spareLb)) return true;
    filled.pop();
    free[first] = true;
    return false;
  }

  /** Adds logs from a place on, the heaviest first; a filling that leaves room for another log is not worth a try. */
  function fillUp(logs: number[], from: number, roomLb: number, spareLb: number): boolean {
    if (++search.steps > MOST_STEPS) return false;
    let tried = -1;
    for (let place = from; place < weights.length; place++) {
      const weight = weights[place]!;
      if (!free[place] || weight > roomLb + HAIR_LB || weight === tried) continue;
      tried = weight;
      free[place] = false;
      logs.push(place);
      if (fillUp(logs, place + 1, roomLb - weight, spareLb)) return true;
      logs.pop();
      free[place] = true;
    }
    if (roomLb > spareLb + HAIR_LB || weights.some((weight, place) => free[place] && weight <= roomLb + HAIR_LB))
      return false;
    return nextTrip(spareLb - Math.max(0, roomLb));
  }

  return nextTrip(trips * payloadLb - total + HAIR_LB) ? filled : undefined;
}
