import { NoAnswer } from "../errors";
import { FIA_WOOD, type SpeciesName } from "./fia-wood.table";
import { GREEN_HEART_AND_SAP } from "./heart-and-sap.table";
import { SHRINKAGE_TO_OVENDRY } from "./shrinkage.table";
import { TRADE_NAMES } from "./trade-names.table";

export type { SpeciesName };

/** Where a shrinkage stands: printed in Table 4-3, worked back from Table 13-5, or from the row of a sales group there. */
export type ShrinkageTable = (typeof SHRINKAGE_TO_OVENDRY)[number][5];

/** All that the tables say about one species. Undefined where a table has no figure. */
export interface Species {
  name: SpeciesName;
  latin: string;
  kind: "hardwood" | "softwood";
  /** oven-dry weight over green volume */
  specificGravity: number;
  /** oven-dry weight over the volume at 12 % moisture */
  specificGravityAt12: number;
  greenMoisturePercent: number;
  heartwoodMoisturePercent: number | undefined;
  sapwoodMoisturePercent: number | undefined;
  /** shrinkage from green to oven dry */
  radialPercent: number | undefined;
  tangentialPercent: number | undefined;
  volumetricPercent: number | undefined;
  shrinkageTable: ShrinkageTable | undefined;
  barkSpecificGravity: number;
  barkMoisturePercent: number;
  /** bark volume over wood volume */
  barkVolumePercent: number;
}

const SHRINKAGE_OF = new Map<string, (typeof SHRINKAGE_TO_OVENDRY)[number]>(
  SHRINKAGE_TO_OVENDRY.map((row) => [row[0], row]),
);
const HEART_AND_SAP_OF = new Map<string, (typeof GREEN_HEART_AND_SAP)[number]>(
  GREEN_HEART_AND_SAP.map((row) => [row[0], row]),
);

/** Every species of the weight table, with what the other tables know of it. */
export const SPECIES_TABLE: readonly Species[] = FIA_WOOD.map(
  ([
    name,
    latin,
    kind,
    specificGravity,
    specificGravityAt12,
    greenMoisturePercent,
    barkGravity,
    barkMoisture,
    bark,
  ]) => {
    const [, , radialPercent, tangentialPercent, volumetricPercent, shrinkageTable] = SHRINKAGE_OF.get(name) ?? [];
    const [, , heartwoodMoisturePercent, sapwoodMoisturePercent] = HEART_AND_SAP_OF.get(name) ?? [];
    return {
      name,
      latin,
      kind: kind === "H" ? "hardwood" : "softwood",
      specificGravity,
      specificGravityAt12,
      greenMoisturePercent,
      heartwoodMoisturePercent,
      sapwoodMoisturePercent,
      radialPercent,
      tangentialPercent,
      volumetricPercent,
      shrinkageTable,
      barkSpecificGravity: barkGravity,
      barkMoisturePercent: barkMoisture,
      barkVolumePercent: bark,
    };
  },
);

const BY_NAME = new Map<SpeciesName, Species>(SPECIES_TABLE.map((species) => [species.name, species]));

/**
 * What the tables say about a species.
 *
 * @source FIADB REF_SPECIES
 * @source FPL-GTR-190, Tables 4-1, 4-3 and 13-5
 */
export function speciesNamed(name: SpeciesName): Species {
  const species = BY_NAME.get(name);
  if (!species) throw new NoAnswer(`species: ${name} is not in the table`);
  return species;
}

/** The spellings a species answers to: its Latin name, the handbook's forms, and the trade's. */
export const SPECIES_NAMES = Object.fromEntries(
  SPECIES_TABLE.map(({ name, latin }) => [name, [latin, ...handbookNames(name), ...(TRADE_NAMES[name] ?? [])]]),
) as unknown as Readonly<Record<SpeciesName, readonly string[]>>;

/** The handbook heads a row "Cedar, yellow": that form, and "yellow cedar". A row for a group of species names none. */
function handbookNames(name: SpeciesName): string[] {
  const shrinkage = SHRINKAGE_OF.get(name);
  const rows = [shrinkage?.[5] === "4-3" ? shrinkage[1] : undefined, HEART_AND_SAP_OF.get(name)?.[1]];
  const headings = rows.filter((heading): heading is NonNullable<typeof heading> => !!heading && heading !== "Aspen");
  return [...new Set(headings)].flatMap((heading) => [heading, heading.split(", ").reverse().join(" ")]);
}
