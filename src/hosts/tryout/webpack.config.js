import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../../../", import.meta.url));

/** The try-out page. It is served from this machine only, so it is built for speed of building, not for size. */
export default {
  mode: "production",
  context: root,
  entry: { page: `${root}src/hosts/tryout/page/page.ts` },
  output: { path: `${root}.cache/tryout`, filename: "[name].js", clean: true },
  cache: {
    type: "filesystem",
    cacheDirectory: `${root}.cache/webpack-tryout`,
    buildDependencies: { config: [fileURLToPath(import.meta.url)] },
  },
  resolve: { extensions: [".ts", ".js"] },
  module: {
    rules: [
      {
        test: /\.ts$/,
        loader: "ts-loader",
        options: { transpileOnly: true, compilerOptions: { noEmit: false } },
      },
    ],
  },
  optimization: { minimize: false },
  devtool: false,
  performance: false,
};
