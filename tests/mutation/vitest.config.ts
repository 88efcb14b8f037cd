import { statSync } from "node:fs";
import { defineConfig } from "vitest/config";
import { BaseSequencer, type TestSpecification } from "vitest/node";

/** Small files first: a fault that any of them notices need not wait for the long searches. */
class SmallFilesFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const size = ({ moduleId }: TestSpecification) => statSync(moduleId).size;
    return files.sort((a, b) => size(a) - size(b));
  }
}

/**
 * The tests that ask the formulas, straight or through their worksheet functions. Those that ask only whether any answer
 * comes back at all notice few faults and would take most of the time.
 */
export default defineConfig({
  test: {
    include: ["tests/math/**/*.test.ts", "tests/functions/**/*.test.ts"],
    exclude: ["tests/functions/hostile.test.ts", "tests/functions/sawing/wild-plans.test.ts"],
    sequence: { sequencer: SmallFilesFirst },
    testTimeout: 60_000,
  },
});
