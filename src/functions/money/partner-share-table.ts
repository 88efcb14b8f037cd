import type { TableCell } from "../../cells/spread";
import { partnerShares, type Part } from "../../math/money/partner-share";

/** What each partner gets as a table, the sum last. */
export function partnerShareTable(asked: Parameters<typeof partnerShares>[0]): TableCell[][] {
  const { isLoss, partners, all } = partnerShares(asked);
  const line = (who: string, { paid, rest, gets }: Part) => [who, paid, rest, gets];
  return [
    ["who", "own outlay back", isLoss ? "share of the loss" : "share of the rest", "gets"],
    ...partners.map((part, i) => line(`partner ${i + 1}`, part)),
    line("all", all),
  ];
}
