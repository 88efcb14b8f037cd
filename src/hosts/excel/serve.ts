import { execFileSync, spawn, spawnSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, rmSync } from "node:fs";
import { homedir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { getHttpsServerOptions } from "office-addin-dev-certs";
import webpack from "webpack";
import DevServer from "webpack-dev-server";
import { DEVELOPMENT_ADDRESS } from "../../catalog/address";

/**
 * `npm run excel`: serves the add-in from this machine over https and puts it into the Excel that is installed here.
 * Ctrl+C takes it out again.
 */
const MANIFEST = fileURLToPath(new URL("../../../dist/manifest.xml", import.meta.url));

/** Microsoft's tool that tells Excel on Windows of an add-in. It cannot be installed elsewhere, so it is fetched here. */
const SIDELOADER = "npx --yes office-addin-debugging@7.0.0";

/** Where Excel on a Mac looks for add-ins that are tried out. */
const MAC_EXCEL = join(homedir(), "Library/Containers/com.microsoft.Excel");
const MAC_MANIFEST = join(MAC_EXCEL, "Data/Documents/wef/bole.manifest.xml");

interface Excel {
  /** What is missing here, in one line; undefined when all is there. */
  missing(): string | undefined;
  putIn(): void;
  takeOut(): void;
}

const EXCEL_BY_PLATFORM: Partial<Record<NodeJS.Platform, Excel>> = {
  win32: {
    missing: () => undefined,
    // Excel loads from this server while the tool still runs, so nothing here may wait for it.
    putIn: () => void spawn(`${SIDELOADER} start "${MANIFEST}" desktop --app excel`, { stdio: "inherit", shell: true }),
    takeOut: () => void spawnSync(`${SIDELOADER} stop "${MANIFEST}"`, { stdio: "inherit", shell: true }),
  },
  darwin: {
    missing: () =>
      existsSync(MAC_EXCEL) ? undefined : "Excel has not been started on this Mac yet. Start it once, then try again.",
    putIn: () => {
      mkdirSync(join(MAC_MANIFEST, ".."), { recursive: true });
      copyFileSync(MANIFEST, MAC_MANIFEST);
      execFileSync("open", ["-a", "Microsoft Excel"]);
      console.log("In Excel: Home, Add-ins, Bole. Was Excel open already? Quit it and start it again.");
    },
    takeOut: () => rmSync(MAC_MANIFEST, { force: true }),
  },
};

const excel = EXCEL_BY_PLATFORM[process.platform];
const missing = excel
  ? excel.missing()
  : "Excel runs on Windows and macOS only. Here: npm start for the try-out sheet, or npm run build for Excel on the web.";
if (!excel || missing) {
  console.error(missing);
  process.exit(1);
}

const CONFIGURATION = new URL("../../../webpack.config.js", import.meta.url).href;
const { default: configuration } = (await import(CONFIGURATION)) as { default: (env: object) => webpack.Configuration };
const server = new DevServer(
  {
    host: new URL(DEVELOPMENT_ADDRESS).hostname,
    port: new URL(DEVELOPMENT_ADDRESS).port,
    static: false,
    server: { type: "https", options: await getHttpsServerOptions() },
    // Excel on the web fetches functions.json from a page of its own.
    headers: { "Access-Control-Allow-Origin": "*" },
    // Excel reads the manifest as a file.
    devMiddleware: { writeToDisk: true },
    // The page's policy allows no script but ours, so nothing is slipped in; reload the pane by hand.
    client: false,
    hot: false,
    liveReload: false,
    setupExitSignals: false,
  },
  webpack(configuration({ address: DEVELOPMENT_ADDRESS, offline: false })),
);
server.compiler.hooks.done.tap("sideload", onceBuilt());
await server.start();

/** The first good build goes into Excel; later ones are picked up when the pane is reloaded. */
function onceBuilt(): (stats: { hasErrors(): boolean }) => void {
  let isIn = false;
  process.once("SIGINT", () => {
    if (isIn) excel?.takeOut();
    process.exit(0);
  });
  return (stats) => {
    if (isIn || stats.hasErrors()) return;
    isIn = true;
    excel?.putIn();
  };
}
