import type { MeterReading } from "@/lib/calc/compare";
import type { Brew } from "./brew";
import type { LoggedReading } from "./log/logged-readings";

/** The readings of the electricity meter that count, in order of time. */
export function meterLog({ log }: Pick<Brew, "log">): readonly LoggedReading[] {
  return log.readings
    .filter(({ measured, isVoid }) => measured.quantity === "day.meter" && !isVoid)
    .sort((one, other) => one.at - other.at);
}

/** The same as plain numbers, kWh. */
export function meterReadings(brew: Pick<Brew, "log">): readonly MeterReading[] {
  return meterLog(brew).map(({ measured: { value, sd } }) => ({ value, sd }));
}
