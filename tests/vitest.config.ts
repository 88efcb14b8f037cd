import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    testTimeout: 120_000,
    hookTimeout: 240_000,
    // What a browser does is asked for again until it is done: a busy machine takes its time.
    expect: { poll: { timeout: 30_000 } },
  },
});
