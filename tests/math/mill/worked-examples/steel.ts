import { ramForceLbf } from "../../../../src/math/mill/ram";
import { beamSagIn, tubeAreaIn2, tubeInertiaIn4, tubeWeightLb } from "../../../../src/math/mill/tube";

export const STEEL = {
  hss_plf: (heightIn: number, widthIn: number, wallIn: number) =>
    tubeWeightLb({ heightIn, widthIn, wallIn, lengthFt: 1 }),
  hss_area: (heightIn: number, widthIn: number, wallIn: number) => tubeAreaIn2({ heightIn, widthIn, wallIn }),
  hss_I: (heightIn: number, widthIn: number, wallIn: number) => tubeInertiaIn4({ heightIn, widthIn, wallIn }),
  beam_mid: (loadKip: number, spanFt: number, modulusKsi: number, inertiaIn4: number) =>
    (beamSagIn({ spanFt, loadLb: loadKip * 1000, inertiaIn4 }) * 29e3) / modulusKsi,
  ring_area: (bore: number, rod: number) => ramForceLbf({ pressurePsi: 1, boreIn: bore, rodIn: rod }),
};
