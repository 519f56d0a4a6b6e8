import { OutOfRangeError, requireInRange } from "../errors";

/** Straight lines between points of minute and °C; two points at one minute are a sudden change. */
export type TemperatureCurve = readonly (readonly [minute: number, celsius: number])[];

export const CURVE_RANGE = {
  minute: { unit: "min", min: 0, max: 1_000_000 },
  celsius: { unit: "°C", min: 0, max: 110 },
} as const;

/**
 * Refuses a curve that runs back in time or leaves the temperatures of liquid wort.
 *
 * @throws {@link OutOfRangeError} naming the minute or temperature.
 */
export function requireCurve(curve: TemperatureCurve): void {
  let before: number = CURVE_RANGE.minute.min;
  for (const point of curve) {
    const minute = point[0];
    // Written this way round so that NaN fails too.
    if (!(minute >= before && minute <= CURVE_RANGE.minute.max)) {
      throw new OutOfRangeError("minute of the curve", minute, { ...CURVE_RANGE.minute, min: before });
    }
    requireInRange("temperature of the curve", point[1], CURVE_RANGE.celsius);
    before = minute;
  }
}
