/* Fresh values for a workbook that holds BOLE formulas: npm run --silent recalc -- in.xlsx out.xlsx */
import { run, withEngine } from "./file/command";
import { recalculated } from "./file/recalc";

const does = "Calculates the BOLE formulas of a workbook and what leans on them, and writes the new values.";
const work = { name: "recalc", does, inPlace: true, make: withEngine(recalculated) };
process.exitCode = await run(work, process.argv.slice(2), new Date());
