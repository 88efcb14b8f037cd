import { table } from "../../cells/spread";
import { versionTable } from "../../catalog/about/version";

/**
 * Version of Bole, for a cell that shows at a glance whether the add-in is there.
 *
 * @customfunction VERSION
 * @returns Version text
 * @words is the add-in there, status
 * @example =BOLE.VERSION() gives "Bole 1.0.0"
 */
export const VERSION = table({}, versionTable);
