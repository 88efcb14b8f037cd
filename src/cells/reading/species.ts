import { offeredForGenus } from "../../math/wood/genera";
import { SPECIES_NAMES, type SpeciesName } from "../../math/wood/species";
import { OWN_GRAVITY, type WoodGiven } from "../../math/wood/wood";
import { contentOf, shown } from "../cell";
import { Unreadable } from "../error";
import { declared, type Declaration } from "./argument";
import { keyIn, oneOf } from "./names";
import { NUMBER, valueOf } from "./digits";

const WRITTEN_NUMBER = new RegExp(`^\\s*-?(?:${NUMBER})\\s*$`);

/** A species by its common name, its Latin name, the handbook's or the trade's. A bare genus is none of its species. */
export const speciesName: Declaration<SpeciesName> = oneOf(SPECIES_NAMES, offersOf);

/** A species where only its density counts: a specific gravity of the person's own may stand in its place. */
export const wood: Declaration<WoodGiven> = declared<WoodGiven>(
  { kind: "word", bare: "specific gravity on green volume", zero: "blank", words: Object.keys(SPECIES_NAMES) },
  "name",
  (cell, as) => {
    const content = contentOf(cell);
    if (typeof content === "number") return gravity(content, cell, as);
    if (typeof content === "string" && WRITTEN_NUMBER.test(content)) return gravity(valueOf(content.trim())!, cell, as);
    return keyIn(SPECIES_NAMES, cell, as, offersOf, " or a specific gravity such as 0.55");
  },
);

function offersOf(word: string): string[] | undefined {
  const offered = offeredForGenus(word);
  return offered && [`these (green, lb/ft3): ${offered[0]}`, ...offered.slice(1)];
}

function gravity(given: number, cell: unknown, as: string): number {
  if (given >= OWN_GRAVITY.least && given <= OWN_GRAVITY.most) return given;
  const wanted = `a name, or a specific gravity from ${OWN_GRAVITY.least} to ${OWN_GRAVITY.most}`;
  throw new Unreadable(as, wanted, shown(cell));
}
