import { NEAR } from "../../rounding";
import { placesIn, type KindPlaces } from "./capacities";
import type { OrderJob, Piece } from "./order-job";

/** The lines of which no log here gives a single piece, as places in the order. */
export function linesNotToBeHad(job: OrderJob): number[] {
  const kinds = placesIn(job);
  return job.pieces.flatMap((piece) => (isToBeHad(job, kinds[piece.kind]!, piece) ? [] : piece.lines));
}

/** Whether a flitch that leaves room for its kerf above the bed is wide enough for the piece over its length. */
function isToBeHad(job: OrderJob, { kind, sums, profiles, at }: KindPlaces, { cutIn, widthSteps }: Piece): boolean {
  const runs = kind.runsIn.flatMap((runIn, run) => (runIn >= cutIn - NEAR ? [run] : []));
  const isWide = profiles.map((profile) =>
    runs.some((run) => profile[run]! > 0 && sums.sizes[profile[run]!]! >= widthSteps + job.ripKerfSteps),
  );
  return at.some((faces, log) =>
    faces.some((profile, low) => isWide[profile] && low >= job.logs[log]!.job.bedSteps + job.kerfSteps),
  );
}
