/** How numbers are shown, in the spreadsheet's own codes. A cell of the kind Text keeps 5/4 and 8-6 as they were typed. */
export const FORMAT = {
  text: "@",
  whole: "#,##0",
  one: "#,##0.0",
  two: "#,##0.00",
  three: "0.000",
  four: "0.0000",
  money: "#,##0.00",
  share: "0.0%",
  date: "yyyy-mm-dd",
} as const;

/** The same where a row that nobody has filled in answers 0: it shows nothing then. */
export const FILLED = {
  whole: '#,##0;-#,##0;" "',
  one: '#,##0.0;-#,##0.0;" "',
  two: '#,##0.00;-#,##0.00;" "',
  three: '0.000;-0.000;" "',
  money: '#,##0.00;-#,##0.00;" "',
} as const;

/** Money of the sample, whose yard is paid in dollars. */
export const DOLLARS = { cents: "$#,##0.00", whole: "$#,##0" } as const;
