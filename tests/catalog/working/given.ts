import fc from "fast-check";
import { FOREST_SPECIES } from "../../../src/math/wood/species";
import { LOG_RULES } from "../../../src/math/logs/log-rules";

type Arbitraries = Record<string, fc.Arbitrary<unknown>>;

/** A number of a range, as often a round one as any, for rounding has its borders there. */
function number(from: number, to: number): fc.Arbitrary<number> {
  // The numbers next to nothing are no sizes, and lose digits of their own.
  const any = fc.double({ min: from, max: to, noNaN: true }).map((value) => (Math.abs(value) < 1e-9 ? from : value));
  return fc.oneof(
    any,
    any.map((value) => Math.min(to, Math.max(from, Math.round(value * 2) / 2))),
  );
}
const whole = (from: number, to: number) => fc.integer({ min: from, max: to });
const many = (from: number, to: number, least = 1) => fc.array(number(from, to), { minLength: least, maxLength: 7 });

/** What an argument may be whose key ends so. */
const BY_UNIT: [RegExp, fc.Arbitrary<unknown>][] = [
  [/In4$/, number(1, 400)],
  [/In2$/, number(1, 2000)],
  [/Cm$/, number(2, 150)],
  [/M$/, number(0.3, 12)],
  [/In$/, number(0.25, 60)],
  [/Ft$/, number(0.5, 40)],
  [/(?:Lb|Lbf)$/, number(0, 8000)],
  [/Percent$/, number(0, 60)],
  [/Fpm$/, number(1, 9000)],
  [/F$/, number(30, 205)],
  [/(?:Bf|[bB]oardFeet)$/, number(1, 3000)],
  [/rpm$|Rpm$/, number(1, 3600)],
  [/Psi$/, number(1, 30000)],
  [/Min$/, number(0, 20)],
  [/[a-z]$|ft3$|Ft3$|Ft2$|1$|2$/i, number(0.1, 500)],
];

/** What an argument may be whose key says more than its unit. */
const BY_KEY: Arbitraries = {
  bark: fc.constantFrom("with", "without"),
  bladeCost: number(0, 80),
  boards: fc.array(fc.record({ widthIn: number(2, 20), lengthFt: number(1, 16) }), { minLength: 1, maxLength: 9 }),
  boardsIn: fc.array(many(0.9, 1.2, 2), { minLength: 2, maxLength: 6 }),
  bound: fc.constantFrom("typical", "low", "high", "fast", "slow"),
  clearanceIn: number(0, 12),
  count: whole(1, 30),
  crossed: fc.boolean(),
  deductions: fc.array(fc.oneof(number(0, 0.3), number(2, 40)), { maxLength: 4 }),
  direction: fc.constantFrom("up", "down"),
  drives: fc.array(fc.record({ driverIn: number(2, 20), drivenIn: number(2, 20) }), { minLength: 1, maxLength: 4 }),
  efficiencyPercent: number(1, 100),
  friction: number(0.01, 0.9),
  grain: fc.constantFrom("radial", "tangential", "volumetric"),
  growthPerF: fc.double({ min: 1e-6, max: 1e-4, noNaN: true }),
  halves: fc.constantFrom("down", "even", "alternate"),
  kerfIn: number(0, 0.75),
  legs: whole(1, 4),
  links: whole(20, 400),
  loads: fc.array(fc.record({ weightLb: number(1, 5000), positionFt: number(-8, 8) }), { minLength: 1, maxLength: 5 }),
  method: fc.constantFrom("mean", "middle", "narrow", "third", "simpson"),
  modulusPsi: number(1e6, 1e8),
  nameplateRpm: number(500, 3600),
  poles: whole(1, 6).map((pairs) => 2 * pairs),
  readings: fc
    .tuple(number(0, 5), fc.array(fc.tuple(number(1, 20), number(0.5, 9)), { minLength: 2, maxLength: 7 }))
    .map(([start, steps]) => {
      let [day, moisturePercent] = [start, 95];
      return steps.map(([days, points]) => ({ day: (day += days), moisturePercent: (moisturePercent -= points) }));
    }),
  rodIn: number(0, 5),
  rounding: fc.constant("none"),
  rule: fc.constantFrom(...Object.keys(LOG_RULES)),
  shared: fc.boolean(),
  sharePercent: number(0, 100),
  sharpenings: whole(0, 20),
  slipPercent: number(0, 20),
  species: fc.constantFrom(...FOREST_SPECIES.map(({ name }) => name)),
  specificGravity: number(0.1, 1.5),
  spread: fc.boolean(),
  starts: whole(1, 6),
  share: number(0, 1),
  taperIn: number(0, 2),
  teeth: whole(6, 80),
  teeth1: whole(6, 80),
  teeth2: whole(6, 80),
  undersizePercent: number(0, 15),
  waneIn: number(0, 3),
  weightsLb: many(1, 4000, 0),
  widthsIn: many(1, 40),
  diametersIn: many(2, 60),
  yieldBf: number(0.2, 2),
};

/** Where one formula's range is narrower than the rest would take the argument for. */
const BY_FORMULA: Record<string, Arbitraries> = {
  packBoardFeet: { fillPercent: number(10, 100) },
  moisturePercent: { wetLb: number(100, 250), dryLb: number(50, 150) },
  bandLengthIn: { centersIn: number(30, 200) },
  bandBendingPsi: { thicknessIn: number(0.01, 0.2), wheelIn: number(20, 60) },
  bandStrainLbf: { widthIn: number(0.5, 24), thicknessIn: number(0.01, 0.25) },
  bandStressPsi: { widthIn: number(0.5, 24), thicknessIn: number(0.01, 0.25) },
  beamSagIn: { inertiaIn4: number(1, 400) },
  breretonVolume: { unit: fc.constantFrom("board feet", "m3", "ft3"), rounding: fc.constantFrom("none", "customs") },
  cullSectorBoardFeet: { defectLengthFt: number(0.5, 8) },
  dryForecast: { emcPercent: number(2, 15), targetPercent: number(16, 80) },
  dryingCurve: { emcPercent: number(2, 15) },
  dryRate: { emcPercent: number(2, 15) },
  emcPercent: { humidityPercent: number(0, 99) },
  feedForBiteFpm: { biteIn: number(0.001, 0.2) },
  gulletFillShare: { biteIn: number(0.001, 0.2) },
  inCubicUnit: { unit: fc.constantFrom("ft3", "m3", "hoppus ft", "cord", "cunit") },
  kilnDays: {
    fromPercent: number(40, 80),
    toPercent: number(10, 30),
    humidityPercent: number(0, 40),
    temperatureF: number(90, 200),
    species: fc.constant("northern red oak"),
    thicknessIn: number(0.5, 3),
  },
  lengthInUnit: { unit: fc.constantFrom("in", "ft", "mm", "cm", "m") },
  logScaleBoardFeet: { rounding: fc.constantFrom("none", "table") },
  logWeightLb: { bound: fc.constantFrom("typical", "low", "high") },
  meterMoisturePercent: { readingPercent: number(6, 25), temperatureF: number(30, 150) },
  mostMoisturePercent: { specificGravity: number(0.1, 1.5) },
  heldPercent: { specificGravity: number(0.1, 1.5) },
  redOakTimeConstantDays: { thicknessIn: number(0.125, 12) },
  airDryDays: {
    thicknessIn: number(0.5, 4),
    bound: fc.constantFrom("typical", "fast", "slow"),
    toPercent: number(8, 40),
  },
  scalingDiameterIn: { rounding: fc.constantFrom("none", "nearest", "nearest up", "down") },
  screwTorqueLbfIn: { diameterIn: number(1, 4), pitchIn: number(0.1, 1) },
  screwPowerHp: { diameterIn: number(1, 4), pitchIn: number(0.1, 1) },
  screwHolds: { diameterIn: number(1, 4), pitchIn: number(0.1, 1) },
  chainLinks: { rounding: fc.constantFrom("even", "none"), pitchIn: number(0.25, 1.5) },
  chainCentersIn: { pitchIn: number(0.25, 1.5) },
  slingLegLb: { angleDegrees: number(30, 90) },
  surfaceMeasureFt2: { halves: fc.constantFrom("down", "even") },
  tallyBoardFeet: { halves: fc.constantFrom("down", "alternate") },
  targetSizeIn: { shrinkagePercent: number(0, 20), planingIn: number(0, 0.5) },
  throatFitIn: { sweepIn: number(0, 6) },
  timeConstantsBetween: { emcPercent: number(0, 5), toPercent: number(6, 20), fromPercent: number(20, 90) },
  roundedArea: { radius: number(0.1, 1), width: number(2, 9), height: number(2, 9) },
  roundedInertia: { radius: number(0.1, 1), width: number(2, 9), height: number(2, 9) },
  shareLeft: { takenPercent: number(0, 99) },
  tubeAreaIn2: { wallIn: number(0.05, 0.5) },
  tubeInertiaIn4: { wallIn: number(0.05, 0.5) },
  tubeSagIn: { wallIn: number(0.05, 0.5), spanFt: number(2, 20) },
  tubeWeightLb: { wallIn: number(0.05, 0.5) },
};
for (const cubic of ["smalianVolume", "huberVolume", "newtonVolume", "coneVolume", "hoppusVolume"])
  BY_FORMULA[cubic] = { unit: BY_FORMULA["inCubicUnit"]!["unit"]! };

/** Arguments for a formula: those of the keys given, those that may be left out now and then left out. */
export function argumentsFor(name: string, keys: readonly string[], mayBeLeftOut: readonly string[]) {
  const each = keys.map((key) => {
    const known = BY_FORMULA[name]?.[key] ?? BY_KEY[key] ?? BY_UNIT.find(([unit]) => unit.test(key))?.[1];
    if (!known) throw new Error(`${name}: no range for ${key}`);
    return [key, mayBeLeftOut.includes(key) ? fc.option(known, { nil: undefined, freq: 4 }) : known] as const;
  });
  return fc.record(Object.fromEntries(each)).map(inOrder);
}

/** Ends of a log, the thinner one first, as most calls would have them. */
function inOrder(given: Record<string, unknown>): Record<string, unknown> {
  const sizes = ["smallIn", "middleIn", "largeIn"].filter((key) => typeof given[key] === "number");
  const sorted = sizes.map((key) => given[key] as number).sort((a, b) => a - b);
  const entries = Object.entries(given).filter(([, value]) => value !== undefined);
  return { ...Object.fromEntries(entries), ...Object.fromEntries(sizes.map((key, at) => [key, sorted[at]])) };
}
