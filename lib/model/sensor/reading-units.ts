import { platoToSpecificGravity, specificGravityToPlato } from "@/lib/calc/gravity";
import {
  barFromPsi,
  celsiusFromFahrenheit,
  degreesPlato,
  fahrenheit,
  imperialGallons,
  litresFromImperialGallons,
  litresFromUsGallons,
  psi,
  specificGravity,
  usGallons,
} from "@/lib/calc/units";
import type { MeasuredKind } from "../log/series";

/** Units in which a sensor may send a value. The first of a kind is the log's own. */
export const UNITS_OF_KIND = {
  temperature: ["°C", "°F"],
  gravity: ["°P", "SG"],
  volume: ["L", "US gal", "imp gal"],
  duration: ["min", "s", "h"],
  ph: ["pH"],
  pressure: ["bar", "kPa", "psi"],
  energy: ["kWh", "Wh", "MJ"],
} as const satisfies Readonly<Record<MeasuredKind, readonly string[]>>;

export type SensorUnit = (typeof UNITS_OF_KIND)[MeasuredKind][number];
export const SENSOR_UNITS: readonly SensorUnit[] = Object.values(UNITS_OF_KIND).flat();

const KPA_PER_BAR = 100;
const MJ_PER_KWH = 3.6;

/** A value in a sensor's unit as the log takes it; the library's own refusal where a conversion does not reach. */
const TO_LOG: Readonly<Record<SensorUnit, (value: number) => number>> = {
  "°C": same,
  "°F": (value) => celsiusFromFahrenheit(fahrenheit(value)),
  "°P": same,
  SG: (value) => specificGravityToPlato(specificGravity(value)),
  L: same,
  "US gal": (value) => litresFromUsGallons(usGallons(value)),
  "imp gal": (value) => litresFromImperialGallons(imperialGallons(value)),
  min: same,
  s: (value) => value / 60,
  h: (value) => value * 60,
  pH: same,
  bar: same,
  kPa: (value) => value / KPA_PER_BAR,
  psi: (value) => barFromPsi(psi(value)),
  kWh: same,
  Wh: (value) => value / 1000,
  MJ: (value) => value / MJ_PER_KWH,
};

function same(value: number): number {
  return value;
}

export function unitsOf(kind: MeasuredKind): readonly SensorUnit[] {
  return UNITS_OF_KIND[kind];
}

export function toLogUnit(unit: SensorUnit, value: number): number {
  return TO_LOG[unit](value);
}

/**
 * A standard uncertainty in the log's unit: the slope of the scale at the value, for some scales have another zero and
 * gravity bends.
 *
 * @param logged - The value in the log's unit.
 */
export function sdToLogUnit(unit: SensorUnit, sd: number, logged: number): number {
  if (unit === "SG") return sd / gravityPerPlato(logged);
  const zero = unit === "°F" ? 32 : 0;
  return TO_LOG[unit](zero + sd) - TO_LOG[unit](zero);
}

/** How much specific gravity a degree Plato is at this extract. */
function gravityPerPlato(plato: number): number {
  return platoToSpecificGravity(degreesPlato(plato + 0.5)) - platoToSpecificGravity(degreesPlato(plato - 0.5));
}
