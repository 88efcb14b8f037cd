import fc from "fast-check";
import { zipSync } from "fflate";

/** How a program other than Excel may write a workbook, one choice of each kind. Every choice is allowed by ECMA-376. */
export interface Habits {
  prefix: "" | "x:";
  quote: '"' | "'";
  addresses: boolean;
  types: "override" | "default";
  targets: "relative" | "absolute";
  separator: "/" | "\\";
  utf16: boolean;
  before: "" | "<!-- written by hand -->\n" | "<?app one?>\n";
  level: 0 | 6;
  texts: "shared" | "inline" | "str";
  formulas: "each" | "shared" | "array";
  values: boolean;
  since1904: boolean;
  behind: readonly Behind[];
  sheet: string;
  rows: readonly (readonly [thickness: number, width: number])[];
}

type Behind = keyof typeof BEHIND;

/** What may stand behind the rows, in the order of the standard. `P` is the prefix. */
const BEHIND = {
  filter: '<Pfilter><PfilterColumn colId="0"><Pfilters><Pfilter val="1"/></Pfilters></PfilterColumn></Pfilter>'
    .replace("<Pfilter>", '<PautoFilter ref="A1:B9">')
    .replace(/<\/Pfilter>$/, "</PautoFilter>"),
  merge: '<PmergeCells count="1"><PmergeCell ref="H1:I2"/></PmergeCells>',
  scale:
    '<PconditionalFormatting sqref="C1:C9"><PcfRule type="colorScale" priority="1"><PcolorScale><Pcfvo type="min"/><Pcfvo type="max"/><Pcolor rgb="FFFF0000"/><Pcolor rgb="FF00FF00"/></PcolorScale></PcfRule></PconditionalFormatting>',
  bars: '<PconditionalFormatting sqref="D1:D9"><PcfRule type="dataBar" priority="2"><PdataBar><Pcfvo type="min"/><Pcfvo type="max"/><Pcolor rgb="FF0000FF"/></PdataBar></PcfRule></PconditionalFormatting>',
  list: '<PdataValidations count="1"><PdataValidation type="list" sqref="G1"><Pformula1>"a,b"</Pformula1></PdataValidation></PdataValidations>',
  sparklines:
    '<PextLst><Pext uri="{05C60535-1F16-4fd2-B633-F4F36F0B64E0}"><x14:sparklineGroups xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main" xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main"><x14:sparklineGroup><x14:sparklines><x14:sparkline><xm:f>A1:B1</xm:f><xm:sqref>J1</xm:sqref></x14:sparkline></x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></Pext></PextLst>',
} as const;

export const habits: fc.Arbitrary<Habits> = fc.record({
  prefix: fc.constantFrom("" as const, "x:" as const),
  quote: fc.constantFrom('"' as const, "'" as const),
  addresses: fc.boolean(),
  types: fc.constantFrom("override" as const, "default" as const),
  targets: fc.constantFrom("relative" as const, "absolute" as const),
  separator: fc.constantFrom("/" as const, "\\" as const),
  utf16: fc.boolean(),
  before: fc.constantFrom("" as const, "<!-- written by hand -->\n" as const, "<?app one?>\n" as const),
  level: fc.constantFrom(0 as const, 6 as const),
  texts: fc.constantFrom("shared" as const, "inline" as const, "str" as const),
  formulas: fc.constantFrom("each" as const, "shared" as const, "array" as const),
  values: fc.boolean(),
  since1904: fc.boolean(),
  behind: fc.subarray(Object.keys(BEHIND) as Behind[]),
  sheet: fc.constantFrom("Logs", "History", "Log: [1]/2", "It's", "Größe 1"),
  rows: fc.array(fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 40 })), {
    minLength: 1,
    maxLength: 8,
  }),
});

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006";
const TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml";
export const SHEET = "xl/worksheets/sheet1.xml";

/** A yard's sheet in some program's habits: thickness, width, BOLE's board feet of 12 ft, twice that, and a remark. */
export function strangeWorkbook(habits: Habits): Uint8Array {
  const { prefix: p, types, targets, separator, level, utf16 } = habits;
  const target = (part: string, from: string) => (targets === "absolute" ? `/${part}` : part.slice(from.length));
  const relation = (id: number, type: string, to: string) =>
    `<Relationship Id="rId${id}" Type="${OFFICE}/${type}" Target="${to}"/>`;
  const relations = (inside: string) => `<Relationships xmlns="${PACKAGE}/relationships">${inside}</Relationships>`;
  const override = (part: string, kind: string) => `<Override PartName="/${part}" ContentType="${TYPE}.${kind}+xml"/>`;
  const isDefault = types === "default";
  const parts: Record<string, string> = {
    "[Content_Types].xml":
      `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>` +
      `<Default Extension="xml" ContentType="${isDefault ? `${TYPE}.sheet.main+xml` : "application/xml"}"/>` +
      `${isDefault ? "" : override("xl/workbook.xml", "sheet.main")}${override(SHEET, "worksheet")}${override("xl/sharedStrings.xml", "sharedStrings")}</Types>`,
    "_rels/.rels": relations(relation(1, "officeDocument", target("xl/workbook.xml", ""))),
    "xl/workbook.xml": `<${p}workbook xmlns${p && ":x"}="${MAIN}" xmlns:r="${OFFICE}"><${p}workbookPr date1904="${habits.since1904 ? 1 : 0}"/><${p}sheets><${p}sheet name="${habits.sheet}" sheetId="1" r:id="rId1"/></${p}sheets></${p}workbook>`,
    "xl/_rels/workbook.xml.rels": relations(
      relation(1, "worksheet", target(SHEET, "xl/")) +
        relation(2, "sharedStrings", target("xl/sharedStrings.xml", "xl/")),
    ),
    [SHEET]: sheetXml(habits),
    "xl/sharedStrings.xml": `<sst xmlns="${MAIN}" count="1" uniqueCount="1"><si><t>oak &amp; ash</t></si></sst>`,
    "customXml/item1.xml": "<other>a part of another program</other>",
  };
  const files = Object.entries(parts).map(([name, text]) => {
    const encoding = utf16 ? "UTF-16" : "UTF-8";
    const whole = `<?xml version="1.0" encoding="${encoding}"?>\n${name.startsWith("xl/") ? habits.before : ""}${text}`;
    const bytes = utf16 ? Uint8Array.from(Buffer.from(`\uFEFF${whole}`, "utf16le")) : new TextEncoder().encode(whole);
    return [name.replaceAll("/", separator), [bytes, { level, mtime: new Date(2020, 0, 1) }]] as const;
  });
  return zipSync(Object.fromEntries(files) as Parameters<typeof zipSync>[0]);
}

function sheetXml(habits: Habits): string {
  const { prefix: p, behind } = habits;
  const rows = habits.rows.map((_, at) => rowXml(habits, at)).join("");
  const tail = (Object.keys(BEHIND) as Behind[]).filter((one) => behind.includes(one)).map((one) => BEHIND[one]);
  const xml = `<Pworksheet xmlns${p && ":x"}="${MAIN}" xmlns:r="${OFFICE}"><PsheetData>${rows}</PsheetData>${tail.join("")}</Pworksheet>`;
  return xml.replace(/<(\/?)P(?=[a-z])/g, `<$1${p}`);
}

function rowXml({ quote: q, addresses, texts, formulas, values, rows }: Habits, at: number): string {
  const row = at + 1;
  const place = (column: string) => (addresses ? ` r=${q}${column}${row}${q}` : "");
  const [thickness, width] = rows[at]!;
  const plain = (column: string, held: number) => `<Pc${place(column)}><Pv>${held}</Pv></Pc>`;
  const call = (line: number) => `_xldudf_BOLE_BOARDFEET(A${line},B${line},12)`;
  const twice = (line: number) => `C${line}*2`;
  // What the file says is out of date, if it says anything: a C of -1 and the D that goes with it.
  const calculated = (column: string, element: string, held: number) =>
    `<Pc${place(column)}>${element}${values ? `<Pv>${held}</Pv>` : ""}</Pc>`;
  const formula = (column: string, of: (line: number) => string, group: number) => {
    if (formulas === "array") return `<Pf t=${q}array${q} ref=${q}${column}${row}${q}>${of(row)}</Pf>`;
    if (formulas === "each") return `<Pf>${of(row)}</Pf>`;
    const whole = ` ref=${q}${column}1:${column}${rows.length}${q}`;
    return row === 1
      ? `<Pf t=${q}shared${q} si=${q}${group}${q}${whole}>${of(1)}</Pf>`
      : `<Pf t=${q}shared${q} si=${q}${group}${q}/>`;
  };
  const remark = {
    shared: `<Pc${place("E")} t=${q}s${q}><Pv>0</Pv></Pc>`,
    inline: `<Pc${place("E")} t=${q}inlineStr${q}><Pis><Pt>oak &amp; ash</Pt></Pis></Pc>`,
    str: `<Pc${place("E")} t=${q}str${q}><Pv>oak &amp; ash</Pv></Pc>`,
  }[texts];
  const cells =
    plain("A", thickness) +
    plain("B", width) +
    calculated("C", formula("C", call, 0), -1) +
    calculated("D", formula("D", twice, 1), -2);
  return `<Prow${addresses ? ` r=${q}${row}${q}` : ""}>${cells}${remark}</Prow>`;
}
