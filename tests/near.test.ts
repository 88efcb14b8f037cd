import { describe, expect, it } from "vitest";
import { testsNear } from "./near";

const THERE = ["tests/math/logs/doyle.test.ts", "tests/math/logs", "tests/math", "tests/cells"];
const exists = (path: string) => THERE.includes(path);

describe("the tests near a changed file", () => {
  it.each([
    ["src/math/logs/doyle.ts", ["tests/math/logs/doyle.test.ts"]],
    ["src/math/logs/gost.table.ts", ["tests/math/logs/"]],
    ["src/math/haul/sling.ts", ["tests/math/"]],
    ["src/cells/reading/names.ts", ["tests/cells/"]],
    ["tests/math/logs/doyle.test.ts", ["tests/math/logs/doyle.test.ts"]],
    ["tests/math/logs/gone.test.ts", []],
    ["tests/math/logs/printed-cells.ts", ["tests/math/logs/"]],
    ["README.md", []],
    ["src/somewhere/new.ts", []],
  ])("%s", (file, near) => expect(testsNear(file, exists)).toEqual(near));
});
