import { bandCentrifugalPsi, bandHeatingPsi, bandStressPsi, bandStretchIn } from "../../../../src/math/mill/band";
import { GRAVITY_FT_PER_S2, PA_PER_PSI, SECONDS_PER_MIN } from "../../../../src/math/units";

const PSI_PER_MPA = 1e6 / PA_PER_PSI;

/** The stress of one rod, as of a band 0.1 thick of the same area on two strands. */
const pullOver = (load: number, area: number) =>
  bandStressPsi({ strainLbf: load, widthIn: area / 0.2, thicknessIn: 0.1 });

/** Free growth on warming: the stretch that the stress of held-back growth would make. */
const growth = (size: number, degreesF: number, growthPerF: number) =>
  bandStretchIn({ stressPsi: bandHeatingPsi({ degreesF, growthPerF }), gaugeIn: size });

/** The band, asked as the rods and hoops of the books. */
export const BAND = {
  strain: (load: number, area: number, modulusPsi: number) =>
    bandStretchIn({ stressPsi: pullOver(load, area), gaugeIn: 1, modulusPsi }),
  /**
   * The area at which the rod stretches by so much: the load over the stress that a stretch of 1 per stress answers. The
   * book's stress and modulus are in MPa.
   */
  area_for_stretch: (load: number, length: number, modulusMPa: number, stretch: number) =>
    load / (stretch / bandStretchIn({ stressPsi: PSI_PER_MPA, gaugeIn: length, modulusPsi: modulusMPa * PSI_PER_MPA })),
  /** The book's weight and gravity: 490 lb/ft3 and 32.2 ft/s2. Its speed gives its stress, within what it rounds. */
  hoop_v: (stressPsi: number, _weight: number, gravity: number) =>
    Math.sqrt((stressPsi / bandCentrifugalPsi({ speedFpm: SECONDS_PER_MIN })) * (gravity / GRAVITY_FT_PER_S2)),
  thermal_stress: (load: number, area: number, degreesF: number, modulusPsi: number, growthPerF: number) =>
    pullOver(load, area) + bandHeatingPsi({ degreesF, growthPerF, modulusPsi }),
  zero_stress_T: (start: number, load: number, area: number, modulusPsi: number, growthPerF: number) =>
    start + pullOver(load, area) / bandHeatingPsi({ degreesF: 1, growthPerF, modulusPsi }),
  growth_diff: (size: number, degreesF: number, growth1: number, growth2: number) =>
    growth(size, degreesF, growth1) - growth(size, degreesF, growth2),
};
