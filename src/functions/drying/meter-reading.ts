import { fahrenheit, moisture } from "../../cells/read";
import { spread } from "../../cells/spread";
import { meterMoisturePercent } from "../../math/drying/meter-reading";

/**
 * A pin meter's reading set right for the temperature of the wood.
 *
 * A rule of thumb, good to a point or so: about 1 point for every 20 °F under or over 70 °F. It is for a meter that does
 * not do so itself, on wood that is not frozen. Take the wood's temperature, not the air's. The species matters too: no
 * public table of corrections was seen, so use the one of your meter's maker.
 *
 * @customfunction METERREADING
 * @returns Percent of the oven-dry weight
 * @example =BOLE.METERREADING(7, 30) gives 9
 * @example =BOLE.METERREADING(12, 95) gives 10.75
 * @example =BOLE.METERREADING(32, 70) gives #N/A
 * @see MOISTURE
 * @words moisture meter, pin meter, cold wood, temperature correction, meter in winter, reading in the kiln
 */
export const METERREADING = spread(
  {
    /** What the meter shows. */
    readingPercent: moisture,
    /** Temperature of the wood. */
    temperatureF: fahrenheit,
  },
  meterMoisturePercent,
);
