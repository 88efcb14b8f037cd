import { createRequire } from "node:module";
import type { ICellData, Injector, IWorkbookData } from "@univerjs/core";
import type * as EngineFormula from "@univerjs/engine-formula";

export type Parts = typeof EngineFormula;

/** A sheet of the engine, as far as it is used here. */
export interface EngineSheet {
  getSheetName(): string;
  getSheetId(): string;
  getSheet(): {
    getCell(row: number, column: number): ICellData | null;
    getCellMatrix(): { forValue(each: (row: number, column: number) => void): void };
  };
}

/** The engine's programming interface, as far as it is used here. */
export interface Api {
  createWorkbook(data: Partial<IWorkbookData>): { getSheets(): EngineSheet[] };
  getFormula(): { executeCalculation(): void; onCalculationResultApplied(limit?: number): Promise<void> };
  disposeUnit(id: string): boolean;
}

export interface Spreadsheet {
  api: Api;
  injector: Injector;
  parts: Parts;
  /** How many calculations were begun so far. */
  calculations(): number;
  /** A number as a number format shows it. */
  format(numberFormat: string, value: number): string;
  dispose(): void;
}

/** The engine's packages must be loaded the CommonJS way in Node; an import fails on one of their dependencies. */
export function loadSpreadsheet(): Spreadsheet {
  const require = createRequire(import.meta.url);
  const { Univer, LocaleType, LogLevel, numfmt } = require("@univerjs/core") as typeof import("@univerjs/core");
  const { FUniver } = require("@univerjs/core/facade") as typeof import("@univerjs/core/facade");
  const preset = require("@univerjs/preset-sheets-node-core") as typeof import("@univerjs/preset-sheets-node-core");
  // Empty, but there: a calculation of more than a second asks for the words of its progress.
  const locales = { [LocaleType.EN_US]: {} };
  const univer = new Univer({ logLevel: LogLevel.SILENT, locale: LocaleType.EN_US, locales });
  univer.registerPlugin(preset.UniverFormulaEnginePlugin);
  univer.registerPlugin(preset.UniverSheetsPlugin);
  univer.registerPlugin(preset.UniverSheetsFormulaPlugin);
  const injector = univer.__getInjector();
  return {
    api: FUniver.newAPI(univer) as unknown as Api,
    injector,
    parts: preset,
    calculations: () => injector.get(preset.FormulaCalculationSessionService).state.id,
    format: (numberFormat, value) => numfmt.format(numberFormat, value, { throws: false }),
    dispose: () => univer.dispose(),
  };
}
