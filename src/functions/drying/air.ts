import { fahrenheit, moisture, percent, zeroCounts } from "../../cells/read";
import { spread } from "../../cells/spread";
import { emcPercent, humidityPercentForEmc } from "../../math/drying/emc";

/**
 * Equilibrium moisture content: what wood settles at in air of a temperature and humidity.
 *
 * @customfunction EMC
 * @returns Percent of the oven-dry weight
 * @example =BOLE.EMC(140, 55) gives 8.4
 * @example =BOLE.EMC(70, 65%) gives 12.0
 * @example =BOLE.EMC(70, 100) gives #N/A
 * @words equilibrium, how dry will it get, shop humidity
 * @see EMCHUMIDITY
 * @picture emc
 */
export const EMC = spread(
  {
    /** Temperature of the air. */
    temperatureF: fahrenheit,
    /** Relative humidity. */
    humidityPercent: zeroCounts(percent),
  },
  emcPercent,
);

/**
 * The humidity that holds wood at a moisture: the inverse of EMC.
 *
 * @customfunction EMCHUMIDITY
 * @returns Percent relative humidity
 * @example =BOLE.EMCHUMIDITY(70, 8) gives 42.0
 * @example =BOLE.EMCHUMIDITY(70, 40) gives #N/A
 * @words kiln setting, dehumidifier setting, humidity for moisture
 * @see EMC
 * @picture emc
 */
export const EMCHUMIDITY = spread(
  {
    /** Temperature of the air. */
    temperatureF: fahrenheit,
    /** Moisture to hold, percent of the oven-dry weight. Up to 3 type it with the sign: 2.5%. */
    moisturePercent: moisture,
  },
  humidityPercentForEmc,
);
