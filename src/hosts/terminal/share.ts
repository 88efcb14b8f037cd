/* A copy for someone without the add-in: npm run --silent share -- in.xlsx out.xlsx */
import { run, withEngine } from "./file/command";
import { shared } from "./file/share";

const does = "Makes a copy of a workbook in which BOLE formulas are values, each formula kept as a note on its cell.";
const work = { name: "share", does, inPlace: false, make: withEngine(shared) };
process.exitCode = await run(work, process.argv.slice(2), new Date());
