import type { Entry, Param } from "../../../src/catalog/entry";
import { argumentText } from "../../../src/catalog/printing/argument-text";
import { pickLists } from "../../../src/catalog/printing/pick-lists";

/**
 * The functions as annotated TypeScript, the form in which Microsoft's generator of functions.json reads them. It judges
 * what we print.
 */
export function annotated(catalog: readonly Entry[]): string {
  const { lists, idOf } = pickLists(catalog);
  const enums = lists.map(({ id, values }) => {
    const members = values.map(({ stringValue: word }) => `  ${JSON.stringify(word)} = ${JSON.stringify(word)},`);
    return `/**\n * @customenum {string}\n */\nenum ${id} {\n${members.join("\n")}\n}\n`;
  });
  return [...enums, ...catalog.map((entry) => annotatedFunction(entry, idOf))].join("\n");
}

function annotatedFunction(
  { name, summary, params, returns }: Entry,
  idOf: (param: Param) => string | undefined,
): string {
  const lines = [
    summary,
    `@customfunction ${name}`,
    ...params.map((param) => `@param ${isMarked(param) ? `[${param.name}]` : param.name} ${argumentText(param)}`),
    `@returns ${returns}`,
  ];
  const signature = params
    .map(
      (param) =>
        `${param.name}${isMarked(param) ? "?" : ""}: ${idOf(param) ?? "any"}[][]${isRepeated(param) ? "[]" : ""}`,
    )
    .join(", ");
  const comment = lines.map((line) => ` * ${line}`).join("\n");
  return `/**\n${comment}\n */\nexport function ${name}(${signature}): any[][] {\n  return [];\n}\n`;
}

function isRepeated({ many }: Param): boolean {
  return many === "repeated";
}

/** What is repeated may be left out as it is. */
function isMarked(param: Param): boolean {
  return param.optional && !isRepeated(param);
}
