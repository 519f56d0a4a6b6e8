import { MEASURABLE } from "@/lib/calc/compare";
import { isSeries, loggedRange, type LoggedQuantity, type MeasuredKind } from "@/lib/model/log/series";
import type { Reading } from "@/lib/model/reading";

type Instrument = Reading["instrument"];

const BY_KIND: Readonly<Record<MeasuredKind, readonly Instrument[]>> = {
  volume: ["measuring stick", "sight glass", "scale", "other"],
  temperature: ["thermometer", "probe", "other"],
  gravity: ["hydrometer", "refractometer", "other"],
  duration: ["clock", "other"],
  ph: ["pH meter", "other"],
  pressure: ["pressure gauge", "probe", "other"],
  energy: ["electricity meter", "other"],
};

/** What is of fermenting or fermented beer: alcohol bends light as well, so a refractometer alone says nothing of it. */
const FERMENTED: ReadonlySet<LoggedQuantity> = new Set<LoggedQuantity>(["fermenter.finalExtract", "fermenter.gravity"]);

/** What a quantity is measured with, the usual instrument first. */
export function instrumentsFor(quantity: LoggedQuantity): readonly Instrument[] {
  const offered = BY_KIND[loggedRange(quantity).kind];
  if (isSeries(quantity)) return offered.filter((each) => mayMeasure(each, quantity));
  const usual = MEASURABLE[quantity].instrument;
  return [usual, ...offered.filter((each) => each !== usual && mayMeasure(each, quantity))];
}

function mayMeasure(instrument: Instrument, quantity: LoggedQuantity): boolean {
  return instrument !== "refractometer" || !FERMENTED.has(quantity);
}
