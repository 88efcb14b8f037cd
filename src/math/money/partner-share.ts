import { mustBeAbove, NoAnswer } from "../errors";
import { centsIn } from "./cents";

interface Partner {
  paid: number;
  share: number;
}

const CENTS_PER_UNIT = 100;

/**
 * What each partner gets of the money that came in: his own outlay back, then his share of the rest.
 * When less came in than was laid out the rest is a loss, carried in the same shares; a partner whose part of it is
 * more than he laid out pays the difference in, which shows as a figure below 0.
 *
 * @formula gets = paid + (receipts - all paid) * share / all shares; cents left by rounding go to the largest remainders
 * @source common practice, no source: the partners' own agreement decides
 * @range one partner or more; only the proportion of the shares counts
 */
export function partnerShares({
  receipts,
  partners,
}: {
  receipts: number;
  partners: readonly Partner[];
}): (string | number)[][] {
  const allShares = partners.reduce((sum, { share }) => sum + share, 0);
  mustBeAbove(0, allShares, "shares of all partners");
  const paidCents = partners.map(({ paid }) => centsIn(paid));
  const restCents = centsIn(receipts) - total(paidCents);
  if (!Number.isSafeInteger(restCents))
    throw new NoAnswer(`receipts and outlays: wanted amounts small enough to count in cents, got ${receipts}`);
  const partCents = sharedOut(
    restCents,
    partners.map(({ share }) => share / allShares),
  );
  const lines = partners.map((_, i) => [`partner ${i + 1}`, paidCents[i] ?? 0, partCents[i] ?? 0] as const);
  return [
    ["who", "own outlay back", restCents < 0 ? "share of the loss" : "share of the rest", "gets"],
    ...[...lines, ["all", total(paidCents), restCents] as const].map(([who, paid, part]) => [
      who,
      paid / CENTS_PER_UNIT,
      part / CENTS_PER_UNIT,
      (paid + part) / CENTS_PER_UNIT,
    ]),
  ];
}

/** Whole cents in the given shares, adding up exactly: each gets his full cents, then the largest remainders one more. */
function sharedOut(cents: number, shares: readonly number[]): number[] {
  const size = Math.abs(cents);
  const parts = shares.map((share) => {
    const exact = Number((size * share).toFixed(6));
    const full = Math.floor(exact);
    return { full, remainder: Number((exact - full).toFixed(6)) };
  });
  const left = size - total(parts.map(({ full }) => full));
  const oneMore = new Set([...parts].sort((a, b) => b.remainder - a.remainder).slice(0, left));
  return parts.map((part) => {
    const whole = part.full + (oneMore.has(part) ? 1 : 0);
    return cents < 0 ? 0 - whole : whole;
  });
}

function total(amounts: readonly number[]): number {
  return amounts.reduce((sum, amount) => sum + amount, 0);
}
