import { NoAnswer, short } from "../errors";
import { MM_PER_IN } from "../units";
import { TIEDOWN_LIMITS } from "./tiedown-limits.table";

/** The gear of the law's tables. */
export type TiedownGear = (typeof TIEDOWN_LIMITS)[number][0];

/** What a chain without a mark counts as. */
const UNMARKED_GRADE = 30;

/** A size typed in decimals of an inch, 0.31 for 5/16, is still that size. */
const SAME_SIZE_IN = 0.006;

/**
 * Pounds of working load limit that a tie-down counts for where it bears no mark of its maker.
 *
 * A chain without a grade mark counts as grade 30, wire rope as 6x37 with a fiber core. A size that is no row of the table
 * has no answer: nothing is read between two rows.
 *
 * @formula by table: the table's cell for the gear, its grade and its size, an unmarked chain as grade 30
 * @source 49 CFR 393.108, tables of chain, synthetic webbing and wire rope
 * @range the sizes and grades of the tables
 * @checked 39 of 39 cells
 */
export function tiedownLimitLb({ gear, sizeIn, grade }: Tiedown): number {
  if (gear !== "chain" && grade !== undefined)
    throw new NoAnswer(`grade: wanted none, for ${gear} has no grade, got ${short(grade)}`);
  const wantedGrade = gear === "chain" ? (grade ?? UNMARKED_GRADE) : 0;
  const ofGear = TIEDOWN_LIMITS.filter(([name]) => name === gear);
  const graded = ofGear.filter(([, rowGrade]) => rowGrade === wantedGrade);
  if (graded.length === 0)
    throw new NoAnswer(`grade: wanted ${listed(ofGear.map((row) => row[1]))}, got ${short(wantedGrade)}`);
  const found = graded.find(([, , inches, millimeters]) => isSize(sizeIn, inches, millimeters));
  if (!found)
    throw new NoAnswer(
      `size of ${gear}${wantedGrade ? ` of grade ${wantedGrade}` : ""} (in): wanted ` +
        `${listed(graded.map((row) => row[2]))}, got ${short(sizeIn)}`,
    );
  return found[4];
}

interface Tiedown {
  gear: TiedownGear;
  sizeIn: number;
  grade?: number | undefined;
}

/** The law prints every size in inches and in whole millimeters, which are not quite the same. */
function isSize(sizeIn: number, inches: number, millimeters: number): boolean {
  return Math.abs(sizeIn - inches) < SAME_SIZE_IN || Math.abs(sizeIn - millimeters / MM_PER_IN) < 1e-9;
}

function listed(values: readonly number[]): string {
  return [...new Set(values)].map(short).join(", ");
}
