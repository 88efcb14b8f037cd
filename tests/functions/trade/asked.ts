import { answerTo } from "../literal-call";

/** Five logs 16 in by 16 ft and one by 8 ft. */
export const SIX_LOGS = '=BOLE.LOGSCALE({16;16;16;16;16;16}, {16;16;16;16;16;8}, "Doyle")';

export const OWN_SUM = "a plain sum or quotient of printed figures, which the sheet does itself";
export const FIREWOOD = "stacked firewood, which is counted by the cord and not by the board";

/** What a formula answers; the answers of several logs are added up. */
export function totalOf(formula: string): number {
  return answerTo(formula)
    .flat()
    .reduce<number>((sum, answer) => sum + Number(answer), 0);
}
