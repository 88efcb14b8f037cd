import { NoAnswer } from "../errors";
import { mustFitIn } from "../wood/moisture";
import { speciesNamed, type SpeciesName } from "../wood/species";
import { emcPercent } from "./emc";
import { mustDryTo } from "./must-dry";
import { redOakTimeConstantDays, timeConstantsBetween } from "./time-constant";

/** The species a time constant was seen for. */
const RED_OAK: SpeciesName = "northern red oak";

interface Kiln {
  species: SpeciesName;
  thicknessIn: number;
  fromPercent: number;
  toPercent: number;
  temperatureF: number;
  humidityPercent: number;
}

/**
 * Days to dry red oak boards in steady air.
 *
 * @formula days = tau * n; tau = redOakTimeConstantDays() [days]; n = timeConstantsBetween(emcPercent: emcPercent())
 * @source Wood drying article, time constant of red oak boards
 * @source FPL-GTR-282, Eq 4-5 for the equilibrium moisture
 * @range northern red oak; 30 to 210 degF, at home at kiln temperatures; target above the equilibrium moisture
 */
export function kilnDays({ species, thicknessIn, fromPercent, toPercent, ...air }: Kiln): number {
  if (species !== RED_OAK)
    throw new NoAnswer(`species: a published time constant was seen for ${RED_OAK} only, got ${species}`);
  mustFitIn(speciesNamed(species), fromPercent, "from");
  const drying = { fromPercent, toPercent, emcPercent: emcPercent(air) };
  mustDryTo(drying);
  const constantDays = redOakTimeConstantDays({ thicknessIn, temperatureF: air.temperatureF });
  return constantDays * timeConstantsBetween(drying);
}
