import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { TOPICS, type Entry } from "../entry";
import { functionFiles } from "../read-catalog";

/** Excel's metadata of the functions, for an add-in served from an address. */
export async function functionsJson(catalog: readonly Entry[], address: string): Promise<string> {
  const { metadataJson, errors } = await generateCustomFunctionsMetadata(Object.keys(TOPICS).flatMap(functionFiles));
  if (errors.length > 0) throw new Error(`The functions' comments were refused:\n${errors.join("\n")}`);
  const entries = new Map(catalog.map((entry) => [entry.name, entry]));
  const metadata = JSON.parse(metadataJson) as { functions: { id: string; description: string; helpUrl?: string }[] };
  for (const listed of metadata.functions) {
    listed.description = entries.get(listed.id)!.summary;
    listed.helpUrl = `${address}/reference/${listed.id}.html`;
  }
  const whole = { allowErrorForDataTypeAny: true, ...metadata };
  return `${JSON.stringify(whole, null, 2)}\n`;
}
