import { NoAnswer } from "../errors";
import { mustFitIn } from "../wood/moisture";
import type { SpeciesName } from "../wood/species";
import { greenMoisturePercentOf, woodOf } from "../wood/wood";
import { AIR_DRYING_DAYS } from "./air-drying-days.table";
import { emcPercent } from "./emc";
import { mustDryTo } from "./must-dry";
import { redOakTimeConstantDays, timeConstantsBetween } from "./time-constant";

/** The air the table's days are taken to stand for: wood settles at 12 % in it. */
export const USUAL_YARD = { temperatureF: 70, humidityPercent: 65 };
/** The moisture and thickness the table's days stand for. */
const TABLE_TARGET_PCT = 20;
const TABLE_THICKNESS_IN = 1;

interface Yard {
  species: SpeciesName;
  thicknessIn: number;
  fromPercent?: number;
  toPercent: number;
  temperatureF: number;
  humidityPercent: number;
  bound: "typical" | "fast" | "slow";
}

/**
 * Days to air dry lumber, roughly.
 *
 * The days of the table are carried over to another thickness, moisture and air in proportion to the time constant
 * published for red oak, and typical is the geometric mean of fast and slow.
 *
 * @formula days = usual * slower * farther;
 *   usual = row.fast if bound = "fast", row.slow if bound = "slow", else sqrt(row.fast * row.slow) [days];
 *   row = airDryingDays();
 *   slower = redOakTimeConstantDays() / redOakTimeConstantDays(thicknessIn: 1, temperatureF: 70) [times];
 *   farther = timeConstantsBetween(fromPercent: fromPercent or green, emcPercent: emcPercent()) /
 *   timeConstantsBetween(fromPercent: green, toPercent: 20, emcPercent: emcPercent(temperatureF: 70, humidityPercent:
 *   65)) [times]; green = wood.greenMoisturePercent [%]; wood = woodOf()
 * @source from memory: the days of 1-inch lumber from green to 20 %
 * @source FPL Report 2086, measured days of 4/4 sugar maple, as a check
 * @source Technical Note 233, what the fast and the slow end stand for
 * @source Wood drying article, the effect of thickness (exponent 1.52) and temperature, from kiln-dried red oak
 * @source FPL-GTR-282, Eq 4-5 for the equilibrium moisture
 * @source common practice, no source: 70 degF and 65 % as the yard's air; the geometric mean as typical
 * @range species of the table; 30 to 210 degF; target above the equilibrium moisture
 */
export function airDryDays({ species, thicknessIn, fromPercent, toPercent, bound, ...air }: Yard): number {
  const days = AIR_DRYING_DAYS[species];
  if (!days) throw new NoAnswer(`days: no figure for ${species} in the table of air-drying days (Technical Note 233)`);
  const wood = woodOf(species);
  const greenPercent = greenMoisturePercentOf(wood);
  const startPercent = fromPercent ?? greenPercent;
  mustFitIn(wood, startPercent, "from");
  const drying = { fromPercent: startPercent, toPercent, emcPercent: emcPercent(air) };
  mustDryTo(drying);
  const usual = { fromPercent: greenPercent, toPercent: TABLE_TARGET_PCT, emcPercent: emcPercent(USUAL_YARD) };
  const slower =
    redOakTimeConstantDays({ thicknessIn, temperatureF: air.temperatureF }) /
    redOakTimeConstantDays({ thicknessIn: TABLE_THICKNESS_IN, temperatureF: USUAL_YARD.temperatureF });
  const farther = timeConstantsBetween(drying) / timeConstantsBetween(usual);
  const tableDays = { fast: days.fast, slow: days.slow, typical: Math.sqrt(days.fast * days.slow) }[bound];
  return tableDays * slower * farther;
}
