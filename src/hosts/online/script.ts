import ts from "typescript";
import about from "../../../package.json";
import type { Entry, Param } from "../../catalog/entry";
import { argumentText } from "../../catalog/printing/argument-text";
import { readCatalog } from "../../catalog/read-catalog";
import { onlineName } from "./name";

/**
 * The whole script: the bundle with its head above it and the functions below. The host lists the functions that a script
 * declares, so they stand outside the bundle. Its documents promise modern ECMAScript and do not say of which year: that of
 * 2019 asks little of it, and beside it only the whole numbers of any length (10n) with which money is rounded.
 */
export function onlineScript(bundle: string, address: string): string {
  const compilerOptions = { target: ts.ScriptTarget.ES2019, module: ts.ModuleKind.None };
  const plain = ts.transpileModule(bundle, { fileName: "bundle.js", compilerOptions }).outputText;
  return head(address) + plain + `\n${readCatalog().map(declaration).join("\n")}`;
}

/** What the file is, and where it differs from the add-in for Excel. */
function head(address: string): string {
  const lines = [
    `Bole ${about.version} for Google Sheets: every worksheet function of the add-in for Excel, as custom functions.`,
    "This file is made by npm run build; do not change it by hand. Licence: MIT.",
    "",
    "To use it: in the spreadsheet choose Extensions, Apps Script, paste the whole file over what stands there, save it",
    'and go back to the sheet. There =BOLE_LOGSCALE(24, 12, "Doyle") answers what =BOLE.LOGSCALE answers in Excel.',
    `What each function takes and where its formula is from: ${address}/reference/index.html`,
    "",
    "No function is left out. What is left out, since a custom function can only answer values:",
    "- the pane: its search, its forms, its ready sheets and the end view of a cut plan as a picture;",
    "- errors by their kind: a refusal that is a formula's whole answer is #ERROR! with the reason behind it. In a formula",
    "  that answers a column, where an error would lose every row, it is text that begins with #N/A or #VALUE!. Another BOLE",
    '  function takes such a text for the error it is; SUM passes over it. =COUNTIF(E2:E41, "#*") counts them.',
    "",
    "Days are read in the script's time zone (Project Settings): let it be the spreadsheet's.",
  ];
  return `/*\n${lines.map((line) => ` * ${line}`.trimEnd()).join("\n")}\n */\n`;
}

/** A function under the comment that the host's autocomplete shows. */
function declaration({ name, summary, params, returns }: Entry): string {
  const comment = [
    summary,
    "",
    ...params.map((param) => `@param {any} ${param.name} ${param.optional ? "Optional. " : ""}${argumentText(param)}`),
    `@return {any} ${returns}.`,
    "@customfunction",
  ];
  return [
    "/**",
    ...comment.map((line) => ` * ${line}`.trimEnd()),
    " */",
    `function ${onlineName(name)}(${params.map(parameter).join(", ")}) {`,
    `  return Bole.answer("${name}", arguments);`,
    "}",
    "",
  ].join("\n");
}

function parameter({ name, many }: Param): string {
  return many === "repeated" ? `...${name}` : name;
}
