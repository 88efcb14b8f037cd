/** A name that a workbook gives to cells or to a formula, with the remark its maker left beside it. */
export interface DefinedName {
  name: string;
  refersTo: string;
  comment?: string;
  /** Counted from 0, where only one sheet knows the name. */
  sheet?: number;
}
