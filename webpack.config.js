import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";
import { tsImport } from "tsx/esm/api";
import webpack from "webpack";

const root = fileURLToPath(new URL(".", import.meta.url));
const { DEVELOPMENT_ADDRESS } = await tsImport("./src/catalog/address.ts", import.meta.url);
const { checkedAddress } = await tsImport("./manifest/manifest.ts", import.meta.url);
const { filesBeside } = await tsImport("./src/hosts/excel/files.ts", import.meta.url);
const { ONLINE_FILE } = await tsImport("./src/hosts/online/name.ts", import.meta.url);
const { onlineScript } = await tsImport("./src/hosts/online/script.ts", import.meta.url);
const { offlineList, workerWith } = await tsImport("./src/hosts/excel/offline/list.ts", import.meta.url);
const { WORKER } = await tsImport("./src/hosts/excel/offline/name.ts", import.meta.url);

/** Excel loads the functions bundle before the first cell can answer, so it must stay small. */
const LARGEST_FUNCTIONS_BUNDLE_KB = 120;

/** Only the bundles are squeezed; a page or a manifest stays readable. */
const LEFT_AS_IT_IS = { minimized: true };

/** The folder for any static host: `npm run build -- --env address=https://example.com/bole`. */
export default (env = {}) => {
  const address = checkedAddress(env.address ?? process.env.BOLE_ADDRESS ?? DEVELOPMENT_ADDRESS);
  return {
    mode: "production",
    // The pane stands on the functions bundle: both run in one page, and a formula is loaded once.
    entry: {
      functions: `${root}src/hosts/excel/runtime.ts`,
      taskpane: { import: `${root}src/hosts/excel/taskpane/taskpane.ts`, dependOn: "functions" },
      index: `${root}src/hosts/excel/site/index.ts`,
      online: {
        import: `${root}src/hosts/online/runtime.ts`,
        filename: ONLINE_FILE,
        library: { type: "var", name: "Bole" },
      },
      // A developer wants each change at once, so the development server keeps nothing.
      ...(env.offline !== false && {
        offline: { import: `${root}src/hosts/excel/offline/worker.ts`, filename: WORKER },
      }),
    },
    output: { path: env.folder ?? `${root}dist`, filename: "[name].js", clean: true },
    resolve: { extensions: [".ts", ".js"] },
    // `npm test` checks the types; here they are only taken off.
    module: { rules: [{ test: /\.ts$/, loader: "ts-loader", options: { transpileOnly: true } }] },
    performance: false,
    plugins: [new FilesBeside(address), new OnlineScript(address), new OfflineList(), new SizeCheck()],
  };
};

/** The files that are copied or written rather than bundled. */
class FilesBeside {
  constructor(address) {
    this.address = address;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap("FilesBeside", (compilation) =>
      compilation.hooks.processAssets.tapPromise("FilesBeside", async () => {
        for (const [name, content] of Object.entries(await filesBeside(this.address)))
          compilation.emitAsset(name, new webpack.sources.RawSource(content), LEFT_AS_IT_IS);
      }),
    );
  }
}

/** Makes the online sheet's script of its bundle. */
class OnlineScript {
  constructor(address) {
    this.address = address;
  }

  apply(compiler) {
    compiler.hooks.thisCompilation.tap("OnlineScript", (compilation) =>
      compilation.hooks.processAssets.tap(
        { name: "OnlineScript", stage: webpack.Compilation.PROCESS_ASSETS_STAGE_OPTIMIZE_INLINE },
        () =>
          compilation.updateAsset(
            ONLINE_FILE,
            (bundle) => new webpack.sources.RawSource(onlineScript(String(bundle.source()), this.address)),
          ),
      ),
    );
  }
}

/** Tells the worker, once all is squeezed, which files there are and what is in them. */
class OfflineList {
  apply(compiler) {
    compiler.hooks.thisCompilation.tap("OfflineList", (compilation) =>
      compilation.hooks.processAssets.tap(
        { name: "OfflineList", stage: webpack.Compilation.PROCESS_ASSETS_STAGE_REPORT },
        () => {
          if (!compilation.getAsset(WORKER)) return;
          const built = compilation.getAssets().map(({ name, source }) => [name, source.buffer()]);
          const list = offlineList(Object.fromEntries(built));
          compilation.updateAsset(
            WORKER,
            (old) => new webpack.sources.RawSource(workerWith(list, String(old.source()))),
          );
        },
      ),
    );
  }
}

/** Says what the functions bundle weighs on the wire, and refuses one that has grown too heavy. */
class SizeCheck {
  apply(compiler) {
    compiler.hooks.emit.tap("SizeCheck", (compilation) => {
      const kilobytes = gzipSync(compilation.getAsset("functions.js").source.buffer()).length / 1024;
      console.log(`functions.js: ${kilobytes.toFixed(1)} KB gzipped (at most ${LARGEST_FUNCTIONS_BUNDLE_KB})`);
      if (!compiler.watchMode && kilobytes > LARGEST_FUNCTIONS_BUNDLE_KB)
        compilation.errors.push(new webpack.WebpackError(`functions.js is over ${LARGEST_FUNCTIONS_BUNDLE_KB} KB`));
    });
  }
}
