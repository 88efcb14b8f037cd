import { existsSync } from "node:fs";
import { homedir } from "node:os";
import { fileURLToPath } from "node:url";
import { getHttpsServerOptions } from "office-addin-dev-certs";
import webpack from "webpack";
import DevServer from "webpack-dev-server";
import { DEVELOPMENT_ADDRESS } from "../../catalog/address";
import { addInId } from "../add-in-id";
import { placingOn, take } from "./this-machine";

/**
 * `npm run excel`: serves the add-in from this machine over https and puts it into the Excel that is installed here.
 * Ctrl+C takes it out again, and so does `npm run excel -- stop` where the window was closed instead.
 */
const MANIFEST = fileURLToPath(new URL("../../../dist/manifest.xml", import.meta.url));
const placing = placingOn(
  { platform: process.platform, home: homedir(), has: existsSync },
  { id: addInId(), manifest: MANIFEST },
);
if (process.argv[2] === "stop") {
  if (placing.takeOut.length === 0) console.log(placing.missing);
  take(placing.takeOut, console.log);
  process.exit(0);
}
if (placing.missing) {
  console.error(placing.missing);
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
    if (isIn) take(placing.takeOut, console.log);
    process.exit(0);
  });
  return (stats) => {
    if (isIn || stats.hasErrors()) return;
    isIn = true;
    take(placing.putIn, console.log);
    console.log(placing.next);
  };
}
