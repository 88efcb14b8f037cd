/* How the stand-in for Excel keeps a sheet's print set-up; see fake-excel.ts. */

import type { FakePages, FakeSheet } from "./fake-cells";
import { loadable, type FakeHost, type Members } from "./fake-host";

/** The set-up of a sheet for paper: each property is kept under Excel's own name for it. */
export function pageLayout(host: FakeHost, sheet: () => FakeSheet): Record<string, unknown> {
  const keep = (name: string) => (value: never) => void (pagesOf(sheet())[name] = value);
  const keepArea = (name: string) => (area: string) => host.later(() => keep(name)(area as never));
  const settersFor = (...names: (keyof Excel.PageLayout | keyof Excel.HeaderFooter)[]) => ({
    setters: Object.fromEntries(names.map((name) => [name, keep(name)])),
  });
  return loadable(host, "pageLayout", {
    ...settersFor("orientation", "zoom", "leftMargin", "rightMargin", "topMargin", "bottomMargin", "footerMargin"),
    methods: {
      setPrintArea: keepArea("area"),
      setPrintTitleRows: keepArea("titleRows"),
      setPrintTitleColumns: keepArea("titleColumns"),
      headersFooters: { defaultForAllPages: loadable(host, "headerFooter", settersFor("centerFooter", "rightFooter")) },
    } satisfies Members<Excel.PageLayout>,
  });
}

export function pageBreaks({ later }: FakeHost, sheet: () => FakeSheet): Members<Excel.PageBreakCollection> {
  const add = (cell: string) =>
    later(() => {
      const pages = pagesOf(sheet());
      pages.breaks = [...((pages.breaks as string[] | undefined) ?? []), cell];
    });
  return { add };
}

function pagesOf(sheet: FakeSheet): FakePages {
  return (sheet.pages ??= {});
}
