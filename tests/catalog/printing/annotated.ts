import type { Entry } from "../../../src/catalog/entry";
import { argumentText } from "../../../src/catalog/printing/argument-text";

/**
 * The functions as annotated TypeScript, the form in which Microsoft's generator of functions.json reads them. It judges
 * what we print.
 */
export function annotated(catalog: readonly Entry[]): string {
  return catalog.map(annotatedFunction).join("\n");
}

function annotatedFunction({ name, summary, params, returns }: Entry): string {
  const lines = [
    summary,
    `@customfunction ${name}`,
    ...params.map((param) => `@param ${param.optional ? `[${param.name}]` : param.name} ${argumentText(param)}`),
    `@returns ${returns}`,
  ];
  const signature = params.map((param) => `${param.name}${param.optional ? "?" : ""}: any[][]`).join(", ");
  const comment = lines.map((line) => ` * ${line}`).join("\n");
  return `/**\n${comment}\n */\nexport function ${name}(${signature}): any[][] {\n  return [];\n}\n`;
}
