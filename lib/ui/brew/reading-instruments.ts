import { readingRange, type MeasurableId, type Reading } from "@/lib/model/reading";

export type Instrument = Reading["instrument"];

const BY_KIND: Readonly<Record<ReturnType<typeof readingRange>["kind"], readonly Instrument[]>> = {
  volume: ["sight glass", "measuring stick", "scale", "other"],
  temperature: ["thermometer", "other"],
  gravity: ["hydrometer", "refractometer", "other"],
  duration: ["clock", "other"],
};

/**
 * What a quantity is measured with, the usual instrument first. Alcohol bends light as well, so a refractometer alone
 * says nothing of fermented beer and is not offered there.
 */
export function instrumentsFor(quantity: MeasurableId): readonly Instrument[] {
  const instruments = BY_KIND[readingRange(quantity).kind];
  return quantity === "fermenter.finalExtract" ? instruments.filter((each) => each !== "refractometer") : instruments;
}

/** The kind of instrument whose reading depends on the temperature of the sample. */
export function needsSampleTemperature(quantity: MeasurableId, instrument: Instrument): boolean {
  return readingRange(quantity).kind === "gravity" && instrument === "hydrometer";
}
