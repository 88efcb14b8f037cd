import { escaped } from "../../../xlsx/escaped";
import { openPackage } from "../../../xlsx/package";
import { readParts } from "../../../xlsx/parts";
import type { Held } from "../../../xlsx/held";
import type { SheetRow } from "../../../xlsx/sheet-cells";

/** Some rows of a sheet of the sample, for the first page. */
interface Excerpt {
  sheet: string;
  says: string;
  /** Headings of the columns shown, and how many decimals their numbers have. */
  columns: readonly { heading: string; decimals?: number }[];
  rows: number;
}

const EXCERPTS: readonly Excerpt[] = [
  {
    sheet: "Log book",
    says: "The log book: what is typed stands left, and what Bole answers stands right.",
    columns: [
      { heading: "Log" },
      { heading: "Species" },
      { heading: "Length" },
      { heading: "Dia", decimals: 2 },
      { heading: "Board feet", decimals: 0 },
      { heading: "Weight lb", decimals: 0 },
      { heading: "Verdict" },
    ],
    rows: 6,
  },
  {
    sheet: "Mill sheet live",
    says: "The mill sheet of one log: the head's scale at every pass, and a box to tick.",
    columns: [
      { heading: "Blade at" },
      { heading: "Done" },
      { heading: "Drop" },
      { heading: "Board" },
      { heading: "Width" },
      { heading: "Length" },
      { heading: "What to do" },
    ],
    rows: 6,
  },
];

/** Pieces of the sample as they stand in the file: crisp at any size, and never older than the workbook beside them. */
export function sampleShown(workbook: Uint8Array): string {
  const { sheets } = readParts(openPackage(workbook, new Date(0)));
  return EXCERPTS.map((excerpt) => {
    const rows = sheets.find(({ name }) => name === excerpt.sheet)!.xml.rows;
    return tableOf(excerpt, rows);
  }).join("\n");
}

function tableOf({ says, columns, rows: count }: Excerpt, rows: readonly SheetRow[]): string {
  const header = rows.findIndex((row) => columns.every(({ heading }) => placeOf(row, heading) !== undefined));
  const places = columns.map(({ heading }) => placeOf(rows[header]!, heading)!);
  const body = rows.slice(header + 1, header + 1 + count).map((row) => {
    const cells = columns.map(({ decimals }, i) => {
      const value = row.cells.find(({ column }) => column === places[i])?.value ?? null;
      return `<td${typeof value === "number" ? ' class="number"' : ""}>${escaped(shown(value, decimals))}</td>`;
    });
    return `<tr>${cells.join("")}</tr>`;
  });
  const headings = columns.map(({ heading }) => `<th scope="col">${escaped(heading)}</th>`);
  const words = escaped(`${says} All data invented.`);
  return [
    `<p class="quiet">${words}</p>`,
    `<div class="sheet" role="group" tabindex="0" aria-label="${words}">`,
    `<table><thead><tr>${headings.join("")}</tr></thead>`,
    `<tbody>${body.join("\n")}</tbody></table></div>`,
  ].join("\n");
}

function placeOf({ cells }: SheetRow, heading: string): number | undefined {
  return cells.find(({ value }) => value === heading)?.column;
}

function shown(value: Held, decimals?: number): string {
  if (typeof value === "number" && decimals !== undefined)
    return value.toLocaleString("en-US", { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
  return value === null ? "" : String(value);
}
