import { sumOf } from "../../numbers";
import type { OrderJob } from "./order-job";
import type { Searched } from "./order-improve";

/** What is known for certain of a plan. */
export type Proof =
  /** No plan takes less. */
  | { is: "best" }
  /** It takes so much more, as a share, than what every plan takes at least. */
  | { is: "near"; overShare: number; leastTakes: number }
  /** It is short, and so is every plan. */
  | { is: "fullest" }
  /** It is short; every plan is short of so many board feet at least, or of none that is known. */
  | { is: "short"; leastShort: number };

/** Totals and bounds within this share of each other are the same. */
const SAME_SHARE = 1e-6;

/** What the bound says of the plan that was found, for an order of which so many board feet can be had from no log. */
export function proofOf(
  job: OrderJob,
  { found, bound }: Pick<Searched, "found" | "bound">,
  notToBeHadBoardFeet: number,
): Proof {
  const isBest = found.total <= bound + SAME_SHARE * Math.abs(found.total);
  if (found.shortBoardFeet > 0) {
    const leastShort = Math.max(0, (bound - sumOf(job.logs, ({ takes }) => takes)) / job.shortPrice);
    return isBest || found.shortBoardFeet <= leastShort * (1 + SAME_SHARE)
      ? { is: "fullest" }
      : { is: "short", leastShort: notToBeHadBoardFeet + leastShort };
  }
  if (notToBeHadBoardFeet > 0) return { is: "fullest" };
  if (isBest) return { is: "best" };
  const takes = sumOf(found.plans, ({ log }) => job.logs[log]!.takes);
  return { is: "near", overShare: takes / bound - 1, leastTakes: bound };
}
