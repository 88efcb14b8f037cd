import { ADIRONDACK_LIMITS, adirondackBoardFeet } from "./adirondack";
import { DOYLE_LIMITS, doyleBoardFeet, doyleTableBoardFeet } from "./doyle";
import { DOYLE_SCRIBNER_LIMITS, doyleScribnerBoardFeet } from "./doyle-scribner";
import {
  INTERNATIONAL_LIMITS,
  internationalEighthBoardFeet,
  internationalQuarterBoardFeet,
  internationalQuarterTableBoardFeet,
} from "./international";
import type { Limits, Log } from "./log";
import { SCRIBNER_LIMITS, scribnerBoardFeet } from "./scribner";
import { SCRIBNER_DECIMAL_C_LIMITS, scribnerDecimalCBoardFeet } from "./scribner-decimal-c";
import {
  INSCRIBED_SQUARE_LIMITS,
  inscribedSquareBoardFeet,
  TWO_THIRDS_LIMITS,
  twoThirdsBoardFeet,
} from "./square-rules";
import { VERMONT_LIMITS, vermontBoardFeet, vermontTableBoardFeet } from "./vermont";

/** The formulas of a log rule, and what it can scale. */
export interface LogRule {
  limits: Limits;
  /** Where the one diameter is taken. */
  measuredAt: "small end" | "middle";
  boardFeet: (log: Log) => number;
  /** Board feet as the printed table has it; left out where no printed table was seen. */
  tableBoardFeet?: (log: Log) => number;
}

export type LogRuleName =
  | "International 1/4"
  | "International 1/8"
  | "Doyle"
  | "Scribner"
  | "Scribner Decimal C"
  | "Doyle-Scribner"
  | "Vermont"
  | "Two-thirds"
  | "Inscribed square"
  | "Adirondack";

/** Every board-foot rule that has a source, the default first. */
export const LOG_RULES: Readonly<Record<LogRuleName, LogRule>> = {
  "International 1/4": {
    limits: INTERNATIONAL_LIMITS,
    measuredAt: "small end",
    boardFeet: internationalQuarterBoardFeet,
    tableBoardFeet: internationalQuarterTableBoardFeet,
  },
  "International 1/8": {
    limits: INTERNATIONAL_LIMITS,
    measuredAt: "small end",
    boardFeet: internationalEighthBoardFeet,
  },
  Doyle: {
    limits: DOYLE_LIMITS,
    measuredAt: "small end",
    boardFeet: doyleBoardFeet,
    tableBoardFeet: doyleTableBoardFeet,
  },
  Scribner: {
    limits: SCRIBNER_LIMITS,
    measuredAt: "small end",
    boardFeet: scribnerBoardFeet,
  },
  "Scribner Decimal C": {
    limits: SCRIBNER_DECIMAL_C_LIMITS,
    measuredAt: "small end",
    boardFeet: scribnerDecimalCBoardFeet,
    tableBoardFeet: scribnerDecimalCBoardFeet,
  },
  "Doyle-Scribner": {
    limits: DOYLE_SCRIBNER_LIMITS,
    measuredAt: "small end",
    boardFeet: doyleScribnerBoardFeet,
  },
  Vermont: {
    limits: VERMONT_LIMITS,
    measuredAt: "small end",
    boardFeet: vermontBoardFeet,
    tableBoardFeet: vermontTableBoardFeet,
  },
  "Two-thirds": {
    limits: TWO_THIRDS_LIMITS,
    measuredAt: "middle",
    boardFeet: twoThirdsBoardFeet,
  },
  "Inscribed square": {
    limits: INSCRIBED_SQUARE_LIMITS,
    measuredAt: "small end",
    boardFeet: inscribedSquareBoardFeet,
  },
  Adirondack: {
    limits: ADIRONDACK_LIMITS,
    measuredAt: "small end",
    boardFeet: adirondackBoardFeet,
  },
};
