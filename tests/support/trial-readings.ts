import type { HeatingRun, TimedTemperature } from "@/lib/calc/learn";
import { celsius, fraction, kilograms, squareMetres } from "@/lib/calc/units";

/** Specific heat of water that the library reckons with, J/(kg·K). */
const WATER_J = 4186.8;

export interface KnownKettle {
  readonly powerW: number;
  readonly lossWPerK: number;
  readonly vesselJPerK: number;
}

export const KNOWN: KnownKettle = { powerW: 2400, lossWPerK: 8, vesselJPerK: 4000 };
export const AMBIENT_C = 18;

/**
 * Readings of a kettle under its lid, by the closed form of first-order heating or cooling:
 * T(t) = T∞ + (T₀ − T∞) exp(−U t / C), with T∞ = air + P / U.
 */
export function closedForm(a: {
  readonly kettle: KnownKettle;
  readonly kind: "heating" | "cooling";
  readonly kg: number;
  readonly fromC: number;
  readonly minutes: readonly number[];
  readonly sd: number;
  /** Adds this many sds to each reading; none where left out. */
  readonly noise?: () => number;
}): HeatingRun {
  const { kettle, kind, kg, fromC, minutes, sd, noise = (): number => 0 } = a;
  const heatJPerK = kg * WATER_J + kettle.vesselJPerK;
  const powerW = kind === "heating" ? kettle.powerW : 0;
  const endC = AMBIENT_C + powerW / kettle.lossWPerK;
  const readings = minutes.map((minute): TimedTemperature => {
    const exact = endC + (fromC - endC) * Math.exp((-kettle.lossWPerK * 60 * minute) / heatJPerK);
    return { seconds: 60 * minute, celsius: celsius(exact + sd * noise()), sd };
  });
  return {
    kind,
    water: { value: kilograms(kg), sd: 0 },
    openAreaM2: squareMetres(0),
    ambientC: celsius(AMBIENT_C),
    relativeHumidity: fraction(0.5),
    readings,
  };
}
