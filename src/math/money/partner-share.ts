import { mustBeAbove, NoAnswer } from "../errors";
import { sum, sumOf } from "../numbers";
import { centsIn } from "./cents";

interface Partner {
  paid: number;
  share: number;
}

/** What a partner gets: his own outlay back, and his part of the rest, which is below 0 where the rest is a loss. */
export interface Part {
  paid: number;
  rest: number;
  gets: number;
}

export interface PartnerShares {
  isLoss: boolean;
  partners: Part[];
  all: Part;
}

const CENTS_PER_UNIT = 100;

/**
 * What each partner gets of the money that came in: his own outlay back, then his share of the rest.
 * When less came in than was laid out the rest is a loss, carried in the same shares; a partner whose part of it is
 * more than he laid out pays the difference in, which shows as a figure below 0.
 *
 * @formula by search: gets = paid + (receipts - all paid) * share / all shares, and the cents left by rounding go to
 *   the largest remainders
 * @source common practice, no source: the partners' own agreement decides
 * @range one partner or more; only the proportion of the shares counts
 */
export function partnerShares({
  receipts,
  partners,
}: {
  receipts: number;
  partners: readonly Partner[];
}): PartnerShares {
  const allShares = sumOf(partners, ({ share }) => share);
  mustBeAbove(0, allShares, "shares of all partners");
  const paidCents = partners.map(({ paid }) => centsIn(paid));
  const restCents = centsIn(receipts) - sum(paidCents);
  if (!Number.isSafeInteger(restCents))
    throw new NoAnswer(`receipts and outlays: wanted amounts small enough to count in cents, got ${receipts}`);
  const partCents = sharedOut(
    restCents,
    partners.map(({ share }) => share / allShares),
  );
  return {
    isLoss: restCents < 0,
    partners: partners.map((_, i) => partOf(paidCents[i]!, partCents[i]!)),
    all: partOf(sum(paidCents), restCents),
  };
}

function partOf(paidCents: number, restCents: number): Part {
  return {
    paid: paidCents / CENTS_PER_UNIT,
    rest: restCents / CENTS_PER_UNIT,
    gets: (paidCents + restCents) / CENTS_PER_UNIT,
  };
}

/** Whole cents in the given shares, adding up exactly: each gets his full cents, then the largest remainders one more. */
function sharedOut(cents: number, shares: readonly number[]): number[] {
  const size = Math.abs(cents);
  const parts = shares.map((share) => {
    const exact = Number((size * share).toFixed(6));
    const full = Math.floor(exact);
    return { full, remainder: Number((exact - full).toFixed(6)) };
  });
  const left = size - sum(parts.map(({ full }) => full));
  const oneMore = new Set([...parts].sort((a, b) => b.remainder - a.remainder).slice(0, left));
  return parts.map((part) => {
    const whole = part.full + (oneMore.has(part) ? 1 : 0);
    return cents < 0 ? 0 - whole : whole;
  });
}
