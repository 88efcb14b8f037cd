import { defineConfig } from "vitest/config";

/**
 * The tests that ask the formulas, straight or through their worksheet functions. Those that ask only whether any answer
 * comes back at all notice few faults and would take most of the time.
 */
export default defineConfig({
  test: {
    include: ["tests/math/**/*.test.ts", "tests/functions/**/*.test.ts"],
    exclude: ["tests/functions/hostile.test.ts", "tests/functions/sawing/wild-plans.test.ts"],
    testTimeout: 60_000,
  },
});
