import type { CutJob } from "./cut-job";
import type { CutSettings } from "./cut-settings";
import { inchesText } from "../inches-text";
import { greenSizeIn, type ProductRow } from "./products";
import { nearestSteps } from "./scale-steps";
import { unusedSettings } from "./unused-settings";

/** Metric sizes come a hair off their inches: a millionth of an inch is no difference on any scale. */
const FELT_IN = 1e-6;

/** What was asked, before it was rounded to the scale. */
interface Asked {
  kerfIn: number;
  ripKerfIn: number;
  products: readonly ProductRow[];
  settings: Partial<CutSettings>;
}

/** Sizes that were rounded to the scale, and inputs that the pattern does not use. */
export function warningsAbout(job: CutJob, { kerfIn, ripKerfIn, products, settings }: Asked): string[] {
  const warnings: string[] = [];
  const check = (what: string, givenIn: number, so: (offIn: number) => string = () => "") => {
    const takenIn = nearestSteps(givenIn, job.stepIn) * job.stepIn;
    if (Math.abs(takenIn - givenIn) > FELT_IN)
      warnings.push(
        `${what} ${inchesText(givenIn)} in is no whole number of ${inchesText(job.stepIn)} in scale steps: ` +
          `${inchesText(takenIn)} in was taken${so(takenIn - givenIn)}`,
      );
  };
  check(
    "kerf",
    kerfIn,
    (offIn) =>
      `, so every board comes out ${inchesText(Math.abs(offIn))} in ${offIn > 0 ? "thicker" : "thinner"} than it says; ` +
      "a finer scale step comes nearer",
  );
  if (job.rip && ripKerfIn !== kerfIn) check("rip kerf", ripKerfIn);
  if (job.openingSteps !== undefined) check("opening face", settings["opening face"]!);
  for (const greenIn of new Set(products.map(greenSizeIn))) check("green size", greenIn);
  const unused: string[] = unusedSettings(job.pattern, settings);
  if (!job.byValue && products.some(({ price }) => price !== undefined))
    unused.push("prices (the objective is board feet)");
  if (unused.length > 0) warnings.push(`not used for this plan, pattern ${job.pattern}: ${unused.join(", ")}`);
  if (job.lies === "flat" && (job.pattern === "cant" || job.pattern === "quarter"))
    warnings.push(`a ${job.pattern} is planned with the small end shimmed up until the pith is level (log lies split)`);
  if (job.pattern === "quarter" && job.log.smallAcrossIn !== job.log.smallUpIn)
    warnings.push("small end across is not used for quarters: the log is taken as round at its diameter");
  warnings.push(...bedWarnings(job));
  return warnings;
}

/** Turned over on its flat, a cant is cut at its own width above the bed; a quarter at the board's thickness. */
function bedWarnings({ pattern, bedSteps, stepIn, cantWidths, products }: CutJob): string[] {
  const lowest = inchesText(bedSteps * stepIn);
  if (pattern === "cant" && cantWidths.some(({ greenSteps }) => greenSteps < bedSteps))
    return [
      `a cant narrower than the bed clearance of ${lowest} in needs something under it when the log is turned over`,
    ];
  if (pattern === "quarter" && products.some(({ greenSteps }) => greenSteps < bedSteps))
    return [
      `the blade goes no lower than ${lowest} in: lay the quarters on something flat, and add its height to the blade's`,
    ];
  return [];
}
