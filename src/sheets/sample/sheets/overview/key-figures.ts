import { DOLLARS, FORMAT } from "../../../formats";

/** A figure of another sheet that the summary repeats. */
export interface KeyFigure {
  label: string;
  name: string;
  unit: string;
  format: string;
  sheet: string;
}

const key = (label: string, name: string, unit: string, format: string, sheet: string): KeyFigure => {
  return { label, name, unit, format, sheet };
};

export const KEY_FIGURES: readonly KeyFigure[] = [
  key("Billed, before tax", "Key_billed", "", DOLLARS.cents, "Invoices"),
  key("Billed for lumber", "Key_lumber_money", "", DOLLARS.cents, "Log to sale"),
  key("Profit on the feet sold, before fixed costs", "Key_log_profit", "", DOLLARS.cents, "Log to sale"),
  key("The same after the fixed costs of a year", "Key_after_fixed", "", DOLLARS.cents, "Log to sale"),
  key("Feet to sell that cover the fixed costs", "Key_break_even", "bf", FORMAT.whole, "Money"),
  key("Logs and lumber left, at cost", "Key_left_at_cost", "", DOLLARS.cents, "Log to sale"),
  key("Lumber left", "Key_left_feet", "bf", FORMAT.whole, "Log to sale"),
  key("Net board feet in the log book", "Key_net_board_feet", "bf", FORMAT.whole, "Log book"),
  key("Money the choice of rule moves", "Key_rule_money", "", DOLLARS.whole, "Which rule"),
  key("Heaviest log, by estimate", "Key_heaviest_log", "lb", FORMAT.whole, "Log book"),
  key("Least payload left at worst", "Key_least_payload", "lb", FORMAT.whole, "Loads"),
  key("Board feet of the cut plan", "Key_cut_plan_feet", "bf", FORMAT.one, "Cut plan"),
  key("Gain from the thinner blade", "Key_thin_kerf_gain", "bf", FORMAT.one, "Cut plan"),
  key("Band speed", "Key_band_speed", "ft/min", FORMAT.whole, "Mill"),
  key("Drive frequency for 4,500 ft/min", "Key_drive_hertz", "Hz", FORMAT.one, "Mill"),
  key("Board feet sawn", "Key_sawn_feet", "bf", FORMAT.whole, "Log results"),
  key("Overrun of the saw over the scale", "Key_overrun", "percent", FORMAT.one, "Log results"),
  key("Share the way of measuring slabs moves", "Key_slab_custom", "", FORMAT.share, "Slabs"),
  key("Walnut slabs reach the target after", "Key_dry_day", "days", FORMAT.whole, "Drying"),
  key("Weight the sample board must reach", "Key_board_weight", "g", FORMAT.whole, "Drying"),
  key("Most to pay for the log chosen", "Key_bid", "", DOLLARS.cents, "Money"),
  key("Cost of a dry board foot", "Key_dry_foot", "", DOLLARS.cents, "Money"),
];
