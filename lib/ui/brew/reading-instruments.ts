import { MEASURABLE } from "@/lib/calc/compare";
import { readingRange, type MeasurableId, type Reading } from "@/lib/model/reading";

type Instrument = Reading["instrument"];

const BY_KIND: Readonly<Record<ReturnType<typeof readingRange>["kind"], readonly Instrument[]>> = {
  volume: ["measuring stick", "sight glass", "scale", "other"],
  temperature: ["thermometer", "other"],
  gravity: ["hydrometer", "refractometer", "other"],
  duration: ["clock", "other"],
};

/**
 * What a quantity is measured with, the usual instrument first. Alcohol bends light as well, so a refractometer alone
 * says nothing of fermented beer and is not offered there.
 */
export function instrumentsFor(quantity: MeasurableId): readonly Instrument[] {
  const usual = MEASURABLE[quantity].instrument;
  const others = BY_KIND[readingRange(quantity).kind].filter((each) => each !== usual);
  return [
    usual,
    ...(quantity === "fermenter.finalExtract" ? others.filter((each) => each !== "refractometer") : others),
  ];
}
