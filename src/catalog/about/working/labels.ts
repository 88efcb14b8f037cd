/** The units that the keys of src/math end in, as a person reads them; longer endings first. */
const UNITS: readonly [ending: RegExp, unit: string][] = [
  [/^cubicFeet$/, "ft3"],
  [/LbPerFt3(?:OfWood)?$/, "lb/ft3"],
  [/(?:[bB]oardFeet|Feet|Bf)$/, "board feet"],
  [/CubicMeters$/, "m3"],
  [/InPerMin$/, "in/min"],
  [/LbfIn$/, "lbf in"],
  [/LbfFt$/, "lbf ft"],
  [/MmHg$/, "mmHg"],
  [/In2$/, "in2"],
  [/In4$/, "in4"],
  [/Ft2$/, "ft2"],
  [/Ft3$/, "ft3"],
  [/Lbf$/, "lbf"],
  [/Lb$/, "lb"],
  [/Psi$/, "psi"],
  [/Percent$/, "%"],
  [/Degrees$/, "degrees"],
  [/Fpm$/, "ft/min"],
  [/Hp$/, "hp"],
  [/[rR]pm$/, "rpm"],
  [/[hH]ertz$/, "Hz"],
  [/Amps$/, "A"],
  [/Days$/, "days"],
  [/Hours$/, "hours"],
  [/Min$|Minutes$/, "min"],
  [/Gallons$/, "gallons"],
  [/Share$/, "share"],
  [/(?:In|Inches)$/, "in"],
  [/Ft$/, "ft"],
  [/F$/, "°F"],
  [/M$/, "m"],
  [/Cm$/, "cm"],
];

/** The unit that a key ends in, or none. */
export function unitOf(key: string): string {
  return UNITS.find(([ending]) => ending.test(key))?.[1] ?? "";
}

/** A key in words, without its unit: `smallIn` is small. */
export function wordsOf(key: string): string {
  if (!/[a-z]{3}/.test(key)) return key;
  const ending = UNITS.find(([each]) => each.test(key))?.[0];
  const bare = ending ? key.replace(ending, "") : key;
  return (bare || key).replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`).trim();
}

/** What the roundings and other functions of the notation do, for those that do not say so themselves. */
export const LEGEND: Readonly<Record<string, string>> = {
  down: "down to a whole number, or to a whole multiple of the number after the comma",
  up: "up to a whole number, or to a whole multiple of the number after the comma",
  nearest: "to the nearest whole number, or multiple of the number after the comma; an exact half goes up",
  halfdown: "to the nearest whole number; an exact half is dropped",
  decimals: "to so many decimals; an exact half goes up",
  floor: "down to a whole number",
  ceil: "up to a whole number",
  ln: "natural logarithm",
  hypot: "root of the sum of both squares",
  along: "what stands at a share of the way from the first to the last, straight between neighbors",
  before: "of each, the sum of those before it",
  deviation: "standard deviation of a sample",
  squares: "sum of the squares about the mean",
  deg: "a degree in radians, pi / 180",
};
