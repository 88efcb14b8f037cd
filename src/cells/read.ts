/** The only way in: the readers that turn a cell into a number in base units, a name or a list, or say why not. */
export {
  described,
  named,
  sameForAll,
  type Declaration,
  type Declarations,
  type Facts,
  type SettingFacts,
} from "./reading/argument";
export { mayBeBlank, mayBeZero, optional, zeroAsText, zeroCounts, zeroIsNone } from "./reading/zero";
export { boardLength, feet, inches, isDateSerial, logLength, spanLength, stemLength } from "./reading/lengths";
export {
  anyNumber,
  count,
  degrees,
  fahrenheit,
  feetPerMinute,
  horsepower,
  mayBeNegative,
  moisture,
  money,
  number,
  numberOr,
  percent,
  pounds,
  poundsForce,
  psi,
} from "./reading/amounts";
export { label, oneOf, text, yesNo } from "./reading/names";
export { speciesName, wood } from "./reading/species";
export { nominalSize, section } from "./reading/nominal-size";
export { forWholeList, repeated, together } from "./reading/whole-list";
export { columns, inchesList, list, matrix, numberedColumns, rows, series, settings } from "./reading/lists";
