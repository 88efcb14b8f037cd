/**
 * What people write above a column for an argument of that name, beside the name itself and the words of its sentence.
 * Common practice, no source. Small letters; commas between.
 *
 * - words: says it by itself
 * - perhaps: may be meant where nothing says it better
 * - beside: may stand beside one of these and says nothing more
 * - never: says that another thing is meant
 */
export interface TradeWords {
  readonly words: string;
  readonly perhaps?: string;
  readonly beside?: string;
  readonly never?: string;
}

const ROUND = "dia, diam, diameter, dib, d";
const OF_A_LOG = "end, inside, bark, ib, inside bark, scale, scaling";
const SMALL = "small, small end, sm, sm end, se, sed, top, top end, tip";
const LARGE = "large, large end, lg, lg end, le, led, butt, butt end, big, big end, base";
const MIDDLE = "middle, mid, center, centre, half way, midlength, mid length";
const AROUND = "girth, circumference, circ, around";

export const TRADE_WORDS: Readonly<Record<string, TradeWords>> = {
  diameter: {
    words: `${ROUND}, ${SMALL}`,
    beside: `${ROUND}, ${OF_A_LOG}`,
    never: `${LARGE}, ${MIDDLE}, ${AROUND}`,
  },
  small: { words: SMALL, perhaps: ROUND, beside: `${ROUND}, ${OF_A_LOG}`, never: `${LARGE}, ${MIDDLE}, ${AROUND}` },
  large: { words: LARGE, beside: `${ROUND}, ${OF_A_LOG}`, never: `${SMALL}, ${MIDDLE}, ${AROUND}` },
  middle: { words: MIDDLE, perhaps: ROUND, beside: `${ROUND}, ${OF_A_LOG}`, never: `${SMALL}, ${LARGE}, ${AROUND}` },
  outer: { words: "outer, outside, rot", perhaps: ROUND, beside: ROUND },
  core: { words: "core, sound core, heart", beside: ROUND },
  girth: { words: `${AROUND}, cbh, gbh, tape`, beside: "mid, over, bark, ob, quarter" },
  length: { words: "length, len, lgth, lngth, lnth, lth, long, l", beside: "nominal, full, scale, scaled", never: "defect" },
  defectlength: { words: "defect length, defect len, defect" },
  distance: { words: "distance, dist, from end, at" },
  thickness: { words: "thickness, thick, thk, thck, thkns, th, t", beside: "rough, nominal, sawn" },
  width: { words: "width, wide, wdth, wid, wd, w, breadth", beside: "face, avg, average, mean" },
  height: { words: "height, high, hgt, ht, h, tall" },
  size: { words: "size, dimension, dim" },
  sweep: { words: "sweep, bow, crook, gap" },
  species: {
    words: "species, spp, spec, sp, kind, wood, tree, timber, variety, sort",
    beside: "type, of, common, name",
  },
  rule: { words: "rule, log rule, scale rule, scaled by" },
  count: { words: "count, qty, quantity, pieces, pcs, pc, ct, number, how many, boards, num", beside: "of, no" },
  boardfeet: {
    words: "board feet, board foot, bf, bdft, bd ft, fbm, boardfeet, footage, bdf",
    perhaps: "tally, scale, feet",
    beside: "net, gross, total, sawn, lumber",
  },
  cubicfeet: { words: "cubic feet, cubic foot, cu ft, cuft, ft3, cf", perhaps: "volume, vol" },
  gross: { words: "gross, gross scale, gross bf", perhaps: "scale, bf, board feet", beside: "board, feet", never: "net" },
  sawn: { words: "sawn, sawed, lumber, mill tally, tally, lumber tally", beside: "bf, board, feet, out" },
  scaled: { words: "scaled, scale, log scale, net scale, net", beside: "bf, board, feet" },
  green: { words: "green, green tally, green bf", beside: "board, feet" },
  moisture: { words: "moisture, mc, moisture content, moist", beside: "now, reading, meter, pct, percent" },
  reading: { words: "reading, meter, meter reading, mc, moisture, moisture reading", beside: "pct, percent" },
  from: { words: "from, start, starting, initial, first, before, green", beside: "mc, moisture, content, pct" },
  to: { words: "to, end, final, finish, after, last, dry, target", beside: "mc, moisture, content, pct" },
  target: { words: "target, goal, aim, wanted, final", beside: "mc, moisture, content, pct" },
  wet: { words: "wet, green, as sawn, before", beside: "weight, wt, wgt, mass", never: "dry" },
  dry: { words: "dry, oven dry, ovendry, od, after", beside: "weight, wt, wgt, mass", never: "wet, green" },
  weight: { words: "weight, wt, wgt, mass, heavy", beside: "log, piece, load, gross, now", never: "oven, limit" },
  load: { words: "load, weight, wt, wgt" },
  temperature: { words: "temperature, temp, dry bulb, db", beside: "air, wood, kiln" },
  humidity: { words: "humidity, rh, relative humidity, hum, r h", beside: "air, pct, percent" },
  kerf: { words: "kerf, saw kerf, cut width", beside: "blade, band" },
  rpm: { words: "rpm, turns, revs, turns per minute", beside: "motor, engine, shaft" },
  price: { words: "price, asking, each, charge", perhaps: "rate, value", beside: "sale, selling, list" },
  cost: { words: "cost, paid, my cost, bought", beside: "my, our" },
  rate: { words: "rate, price, charge, fee" },
  hours: { words: "hours, hrs, hr, time" },
  permile: { words: "per mile, mile rate, mileage rate, cost mile, rate mile" },
  layers: { words: "layers, layer, courses, course, tiers, rows high" },
  base: { words: "base, bunk, bunks, foundation, bearers", beside: "height, thickness, thk" },
  miles: { words: "miles, mi, mileage", beside: "round, trip" },
  quantity: { words: "quantity, qty, amount, how many, units", perhaps: "pieces, pcs, count" },
  angle: { words: "angle, ang, deg", beside: "sling, leg" },
  limit: { words: "limit, wll, working load limit, working load" },
};
