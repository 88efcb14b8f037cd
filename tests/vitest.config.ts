import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

/** Folders whose files leave nothing behind them: what one file has loaded serves the next, which halves their time. */
const PURE = ["math", "cells", "formula", "functions", "catalog"].map((folder) => `tests/${folder}/**/*.test.ts`);

export default defineConfig({
  test: {
    // As many as there are cores: Vitest by itself leaves one idle, which is half of a machine with two.
    maxWorkers: availableParallelism(),
    projects: [
      { extends: true, test: { name: "pure", include: PURE, isolate: false } },
      { extends: true, test: { name: "hosts", include: ["tests/**/*.test.ts"], exclude: PURE } },
    ],
    testTimeout: 120_000,
    hookTimeout: 240_000,
    // What a browser does is asked for again until it is done: a busy machine takes its time.
    expect: { poll: { timeout: 30_000 } },
  },
});
