/**
 * Moisture of green heartwood and sapwood, percent of the oven-dry weight, as far as the page was to be had.
 *
 * @source FPL-GTR-190, Table 4-1
 *
 * Columns: species; the row's name in the handbook; heartwood; sapwood. A dash in the book is undefined here.
 * The book's one row for aspen stands for both aspens.
 */
export const GREEN_HEART_AND_SAP = [
  ["red alder", "Alder, red", undefined, 97],
  ["apple", "Apple", 81, 74],
  ["black ash", "Ash, black", 95, undefined],
  ["green ash", "Ash, green", undefined, 58],
  ["white ash", "Ash, white", 46, 44],
  ["quaking aspen", "Aspen", 95, 113],
  ["bigtooth aspen", "Aspen", 95, 113],
  ["American basswood", "Basswood, American", 81, 133],
  ["American beech", "Beech, American", 55, 72],
  ["paper birch", "Birch, paper", 89, 72],
  ["sweet birch", "Birch, sweet", 75, 70],
  ["yellow birch", "Birch, yellow", 74, 72],
  ["black cherry", "Cherry, black", 58, undefined],
  ["sugar maple", "Maple, sugar", 65, 72],
  ["northern red oak", "Oak, northern red", 80, 69],
  ["white oak", "Oak, white", 64, 78],
  ["yellow-poplar", "Yellow-poplar", 83, 106],
  ["baldcypress", "Baldcypress", 121, 171],
  ["eastern redcedar", "Cedar, eastern red", 33, undefined],
  ["incense-cedar", "Cedar, incense", 40, 213],
  ["Port-Orford-cedar", "Cedar, Port-Orford", 50, 98],
  ["western redcedar", "Cedar, western red", 58, 249],
  ["Alaska yellow-cedar", "Cedar, yellow", 32, 166],
  ["Douglas-fir", "Douglas-fir, coast type", 37, 115],
  ["balsam fir", "Fir, balsam", 88, 173],
  ["grand fir", "Fir, grand", 91, 136],
  ["noble fir", "Fir, noble", 34, 115],
  ["Pacific silver fir", "Fir, Pacific silver", 55, 164],
  ["white fir", "Fir, white", 98, 160],
  ["eastern hemlock", "Hemlock, eastern", 97, 119],
  ["western hemlock", "Hemlock, western", 85, 170],
  ["western larch", "Larch, western", 54, 119],
  ["loblolly pine", "Pine, loblolly", 33, 110],
  ["lodgepole pine", "Pine, lodgepole", 41, 120],
  ["longleaf pine", "Pine, longleaf", 31, 106],
  ["Engelmann spruce", "Spruce, Engelmann", 51, 173],
] as const;

/** Check totals: the book's one aspen row is counted twice. */
export const GREEN_HEART_AND_SAP_TOTALS = { rows: 36, heartwood: 2265, sapwood: 3920 };
