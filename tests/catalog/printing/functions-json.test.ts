import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { expect, it } from "vitest";
import { functionsJson } from "../../../src/catalog/printing/functions-json";
import { annotated } from "./annotated";
import { readCatalog } from "../../../src/catalog/read-catalog";

interface Listed {
  id: string;
  description: string;
  helpUrl?: string;
}

it("functions.json says what Microsoft's generator reads from the same functions as annotated TypeScript", async () => {
  const catalog = readCatalog();
  const folder = mkdtempSync(join(tmpdir(), "bole-functions-"));
  try {
    const file = join(folder, "functions.ts");
    writeFileSync(file, annotated(catalog));
    const { metadataJson, errors } = await generateCustomFunctionsMetadata([file]);
    expect(errors).toEqual([]);
    // The generator keeps the quotes of a member's name such as "International 1/4".
    const theirs = JSON.parse(metadataJson.replaceAll(/"name": "\\"(.*?)\\""/g, '"name": "$1"')) as {
      functions: Listed[];
    };
    const ours = JSON.parse(functionsJson(catalog, "https://mill.example")) as { functions: Listed[] };
    expect(ours.functions.map(({ helpUrl }) => helpUrl)).toEqual(
      catalog.map(({ name }) => `https://mill.example/reference/${name}.html`),
    );
    expect({ ...ours, functions: ours.functions.map(withoutHelp) }).toEqual({
      allowErrorForDataTypeAny: true,
      ...theirs,
    });
  } finally {
    rmSync(folder, { recursive: true });
  }
});

function withoutHelp({ helpUrl, ...listed }: Listed): Omit<Listed, "helpUrl"> {
  expect(helpUrl).toBeDefined();
  return listed;
}
