/* Between Excel and the online sheet: npm run --silent convert -- in.xlsx out.xlsx --for online */
import { run } from "./file/command";
import { converted, HOSTS } from "./file/convert";

const does = "Spells the BOLE formulas of a workbook as the online sheet calls them, or as Excel stores them.";
const choice = { option: "--for", words: HOSTS };
const work = { name: "convert", does, inPlace: true, choice, make: converted };
process.exitCode = await run(work, process.argv.slice(2), new Date());
