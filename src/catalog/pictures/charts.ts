import { emcPercent } from "../../math/drying/emc";
import {
  arrow,
  dashed,
  dot,
  label,
  line,
  name,
  type Part,
  type Picture,
  type Point,
} from "../../functions/drawing/marks";

const LEFT = 44;
const RIGHT = 320;
const FOOT = 175;
const TOP = 28;

/** Temperatures of the drawn curves: a yard in winter, a shop, a kiln. */
const TEMPERATURES_F = [32, 70, 150];
const MOST_EMC = 25;

export const emc: Picture = {
  title: "What wood settles at in air",
  desc: "Equilibrium moisture content against relative humidity at 32, 70 and 150 degrees Fahrenheit. It rises slowly up to about 80 percent humidity, then steeply, and is lower the warmer the air.",
  height: 215,
  parts: [
    axes("humidity, %", "EMC, %"),
    ...[0, 20, 40, 60, 80, 100].map((h) => label([acrossEmc(h), FOOT + 16], String(h))),
    ...[0, 5, 10, 15, 20, 25].map((e) => [
      label([LEFT - 6, upEmc(e) + 4], String(e), "end"),
      line([LEFT - 3, upEmc(e)], [LEFT, upEmc(e)]),
    ]),
    ...TEMPERATURES_F.map((temperatureF) => polyline(emcCurve(temperatureF))),
    label([acrossEmc(60), upEmc(14)], "32 and 70 °F", "end"),
    label([acrossEmc(78), upEmc(9)], "150 °F", "start"),
    dashed(
      [acrossEmc(65), FOOT],
      [acrossEmc(65), upEmc(emcPercent({ temperatureF: 70, humidityPercent: 65 }))],
      [LEFT, upEmc(emcPercent({ temperatureF: 70, humidityPercent: 65 }))],
    ),
  ],
};

/** The drawn stack: it starts at 60 %, the air holds 12 %, and and in so many days all but 37 % of the difference is gone. */
const STACK = { start: 60, emc: 12, days: 40, target: 20, last: 120 };

export const curve: Picture = {
  title: "A drying curve through your own readings",
  desc: "Moisture against days. Dots are the readings; the curve through them falls fast at first and then ever more slowly towards the moisture the air holds wood at. The day is where it meets the target.",
  height: 215,
  parts: [
    axes("days", "moisture, %"),
    polyline(Array.from({ length: 61 }, (_, i) => dryingPoint(i * 2))),
    ...[0, 12, 25, 38].map((day, i) => dot([dryingPoint(day)[0], dryingPoint(day)[1] + [0, -4, 4, -2][i]!], 3.5)),
    dashed([LEFT, upDry(STACK.emc)], [RIGHT, upDry(STACK.emc)]),
    name([RIGHT, upDry(STACK.emc) + 16], "emc", "end"),
    dashed([LEFT, upDry(STACK.target)], [dryingPoint(dayOfTarget())[0], upDry(STACK.target)]),
    name([LEFT + 6, upDry(STACK.target) - 6], "target", "start"),
    arrow([dryingPoint(dayOfTarget())[0], upDry(STACK.target)], [dryingPoint(dayOfTarget())[0], FOOT]),
    label([dryingPoint(dayOfTarget())[0], FOOT + 16], "the day"),
    name([dryingPoint(12)[0] + 12, dryingPoint(12)[1]], "readings", "start"),
  ],
};

function axes(across: string, up: string): Part[] {
  return [
    line([LEFT, TOP], [LEFT, FOOT], [RIGHT, FOOT]),
    label([RIGHT, FOOT + 33], across, "end"),
    label([4, TOP - 12], up, "start"),
  ];
}

function polyline([first, ...rest]: Point[]): string {
  return line(first!, ...rest);
}

function emcCurve(temperatureF: number): Point[] {
  return Array.from({ length: 46 }, (_, i) => 2 + i * 2)
    .map((humidityPercent): Point => [acrossEmc(humidityPercent), upEmc(emcPercent({ temperatureF, humidityPercent }))])
    .filter(([, y]) => y >= TOP);
}

function acrossEmc(humidityPercent: number): number {
  return LEFT + ((RIGHT - LEFT) * humidityPercent) / 100;
}

function upEmc(percent: number): number {
  return FOOT - ((FOOT - TOP) * percent) / MOST_EMC;
}

function dryingPoint(day: number): Point {
  const moisture = STACK.emc + (STACK.start - STACK.emc) * Math.exp(-day / STACK.days);
  return [LEFT + ((RIGHT - LEFT) * day) / STACK.last, upDry(moisture)];
}

function upDry(percent: number): number {
  return FOOT - ((FOOT - TOP) * percent) / (STACK.start + 5);
}

function dayOfTarget(): number {
  return STACK.days * Math.log((STACK.start - STACK.emc) / (STACK.target - STACK.emc));
}
