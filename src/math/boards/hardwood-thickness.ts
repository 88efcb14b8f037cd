import { NoAnswer, short } from "../errors";
import { inchesText } from "../inches-text";
import { HARDWOOD_THICKNESSES, type HardwoodThickness } from "./hardwood-thickness.table";

/** What may be asked about a hardwood thickness. */
type ThicknessState = "nominal" | "kiln-dried" | "surfaced" | "surfaced one side";

/** How far kiln-dried rough lumber may be under its nominal thickness: from, to and scant, in inches. */
const KILN_DRIED_SCANT = [
  { fromIn: 3 / 8, toIn: 1 + 3 / 4, scantIn: 1 / 16 },
  { fromIn: 2, toIn: Infinity, scantIn: 1 / 8 },
];

/** Slack for a thickness typed in millimetres, in inches. */
const SAME_IN = 0.001;

/**
 * Thickness of hardwood lumber in inches: nominal, the least allowed when kiln-dried rough, or surfaced.
 *
 * @formula by table: nominal as named, kiln-dried 1/16 in less from 3/8 to 1 3/4 in and 1/8 in less from 2 in,
 *   surfaced the table's cell
 * @source NHLA kiln-dried rules, page 56 of the 2023 book: the kiln-dried minimum
 * @source Surfaced hardwood tables, S1S and S2S
 * @range nominal: any; kiln-dried: 3/8 to 1 3/4 in and from 2 in; surfaced: the table's thicknesses only
 * @checked 22 of 22 surfaced thicknesses of the tables and 1 printed kiln-dried example (5/4: 1.1875 in)
 */
export function hardwoodThicknessIn({ thicknessIn, state }: { thicknessIn: number; state: ThicknessState }): number {
  if (state === "nominal") return thicknessIn;
  if (state === "kiln-dried") return kilnDriedMinimumIn(thicknessIn);
  return surfacedIn(thicknessIn, state);
}

function kilnDriedMinimumIn(thicknessIn: number): number {
  const rule = KILN_DRIED_SCANT.find(
    ({ fromIn, toIn }) => thicknessIn > fromIn - SAME_IN && thicknessIn < toIn + SAME_IN,
  );
  if (!rule)
    throw new NoAnswer(
      `kiln-dried thickness (in): wanted nominal 3/8 to 1 3/4, or 2 and thicker, got ${short(thicknessIn)}`,
    );
  return thicknessIn - rule.scantIn;
}

function surfacedIn(thicknessIn: number, state: "surfaced" | "surfaced one side"): number {
  const row = HARDWOOD_THICKNESSES.find(({ nominalIn }) => Math.abs(nominalIn - thicknessIn) < SAME_IN);
  if (!row)
    throw new NoAnswer(
      `surfaced thickness: wanted a nominal thickness of the table (${HARDWOOD_THICKNESSES.map(nameOf).join(", ")}), got ${short(thicknessIn)} in`,
    );
  const answerIn = state === "surfaced" ? row.surfacedTwoSidesIn : row.surfacedOneSideIn;
  if (answerIn === undefined)
    throw new NoAnswer(`${nameOf(row)} ${state} (in): no figure was found in print${memoryOf(row, state)}`);
  return answerIn;
}

/** A number in a cell cannot say that it is from memory; a message can. */
function memoryOf(row: HardwoodThickness, state: string): string {
  const remembered = row.surfacedTwoSidesFromMemoryIn;
  return state === "surfaced" && remembered !== undefined ? `; from memory ${remembered}` : "";
}

function nameOf({ quarters, nominalIn }: HardwoodThickness): string {
  return quarters ?? inchesText(nominalIn);
}
