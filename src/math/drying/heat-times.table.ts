/**
 * Minutes to bring the centre of ponderosa pine square timbers to 133 degF in a chamber at 160 degF dry bulb: the numbers
 * in parentheses, the upper ends of the 99 % confidence interval.
 *
 * @source FPL-GTR-190, Table 20-8, printed p. 20-11
 * @source FPL-RP-607 for what the parentheses mean
 *
 * Columns: wet-bulb depression, degF; wood at the start, degF; timbers of 4, 6, 8, 10 and 12 inches square.
 * Undefined where the copy had no figure.
 */
export const HEAT_TIMES_UPPER_MIN = [
  [2, 40, 225, 429, 682, 980, 1321],
  [4, 40, 259, 492, 782, 1123, 1512],
  [6, 40, 282, 535, 850, 1220, 1643],
  [8, 40, 299, 569, 903, 1296, 1745],
  [10, 40, 314, 597, 947, 1359, 1830],
  [12, 40, 327, 621, 986, 1414, 1904],
  [2, 50, 200, 382, 609, 878, 1185],
  [4, 50, 229, 437, 697, 1003, 1354],
  [6, 50, 249, 475, 756, 1088, 1468],
  [8, 50, 264, 504, 802, 1155, 1558],
  [10, 50, 277, 529, 841, 1210, 1633],
  [12, 50, 288, 550, 875, 1258, 1697],
  [2, 60, 182, 350, 559, 807, 1091],
  [4, 60, 208, 400, 638, 921, 1245],
  [6, 60, 226, 433, 692, 998, 1349],
  [8, 60, 240, 460, 734, 1058, 1430],
  [10, 60, 251, 482, 769, 1108, undefined],
] as const;

/** Check totals by size: the sums of the columns. */
export const HEAT_TIMES_UPPER_TOTALS = { rows: 17, four: 4320, six: 8245, eight: 13122, ten: 18876, twelve: 23965 };
