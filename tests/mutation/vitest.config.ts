import { defineConfig } from "vitest/config";

/** The tests that ask the formulas, straight or through their worksheet functions. */
export default defineConfig({
  test: { include: ["tests/math/**/*.test.ts", "tests/functions/**/*.test.ts"], testTimeout: 60_000 },
});
