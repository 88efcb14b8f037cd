/* Bole without Excel: a workbook's key results here, and the workbook itself in the browser. */
import { basename } from "node:path";
import { buildPage } from "./build";
import { showInBrowser } from "./desktop";
import { startEngine } from "../../engine/engine";
import { withFreeSheet } from "./free-sheet";
import { keyResults, listed, openWorkbook, SAMPLE, workbookBytes } from "../terminal/sample";
import { servePage } from "./server";
import { fromWhereTyped } from "../terminal/where-typed";

const USUAL_PORT = 4780;
const LAST_PORT = 65_535;

try {
  await start();
} catch (fault) {
  console.error(fault instanceof Error ? fault.message : String(fault));
  process.exit(1);
}

async function start(): Promise<void> {
  const wanted = wantedPort(process.env["BOLE_PORT"]);
  const engine = await startEngine();
  const own = process.env["BOLE_WORKBOOK"];
  const path = own ? fromWhereTyped(own) : SAMPLE;
  const bytes = await workbookBytes(path);
  const workbook = await openWorkbook(engine, path, (line) => console.log(line), bytes);
  engine.stop();
  console.log(`${own ? path : "The sample workbook (an invented yard)"}, recalculated:\n`);
  const results = keyResults(workbook);
  console.log(results.length > 0 ? `${listed(results)}\n` : "  No cell of it shows a name that begins with Key_.\n");
  const snapshot = { ...withFreeSheet(workbook.snapshot), name: basename(path) };
  await buildPage((line) => console.log(line));
  const server = await servePage({ snapshot, bytes }, wanted);
  if (wanted !== 0 && server.port !== wanted) console.log(`Port ${wanted} is taken; using ${server.port}.`);
  console.log(`Try the functions in the browser: ${server.address}`);
  console.log("Stop with Ctrl+C.");
  showInBrowser(server.address);
  for (const signal of ["SIGINT", "SIGTERM"] as const)
    process.on(signal, () => void server.close().then(() => process.exit(0)));
}

/** BOLE_PORT, where it is set; 0 lets the system choose. */
function wantedPort(given = String(USUAL_PORT)): number {
  if (/^\d+$/.test(given) && Number(given) <= LAST_PORT) return Number(given);
  throw new Error(`BOLE_PORT must be a whole number from 0 to ${LAST_PORT}, not "${given}".`);
}
