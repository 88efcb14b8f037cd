/* A copy for someone without the add-in: npm run --silent share -- in.xlsx out.xlsx */
import { run } from "./file/command";
import { shared } from "./file/share";

const does = "Makes a copy of a workbook in which BOLE formulas are values, each formula kept as a note on its cell.";
process.exitCode = await run({ name: "share", does, inPlace: false, make: shared }, process.argv.slice(2), new Date());
