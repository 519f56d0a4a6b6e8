import { z } from "zod";
import { specificGravityToPlato } from "@/lib/calc/gravity";
import { barFromPsi, celsiusFromFahrenheit, fahrenheit, psi, specificGravity } from "@/lib/calc/units";
import { counted } from "../../measured";
import type { SeriesId } from "../../log/series";
import { oneOf } from "../../written";
import { isZone } from "../../zoned-time";
import { CSV_LIMITS } from "./table";

/** What a column of a file can hold: a quantity in a unit, with the uncertainty of a usual probe in the log's unit. */
interface ColumnUnit {
  readonly id: string;
  readonly text: string;
  readonly quantity: SeriesId;
  /** Common practice, no source. */
  readonly sd: number;
  readonly toLibrary: (value: number) => number;
}

const same = (value: number): number => value;
const BAR_PER_KPA = 0.01;

export const COLUMN_UNITS = [
  unit("gravity sg", "Gravity, SG", "fermenter.gravity", 0.25, (sg) => specificGravityToPlato(specificGravity(sg))),
  unit("gravity plato", "Gravity, °P", "fermenter.gravity", 0.25),
  unit("temperature c", "Temperature, °C", "fermenter.temperature", 0.5),
  unit("temperature f", "Temperature, °F", "fermenter.temperature", 0.5, (f) => celsiusFromFahrenheit(fahrenheit(f))),
  unit("pressure bar", "Gauge pressure, bar", "fermenter.pressure", 0.05),
  unit("pressure kpa", "Gauge pressure, kPa", "fermenter.pressure", 0.05, (kPa) => kPa * BAR_PER_KPA),
  unit("pressure psi", "Gauge pressure, psi", "fermenter.pressure", 0.05, (value) => barFromPsi(psi(value))),
  unit("ph", "pH", "fermenter.ph", 0.05),
] as const;

function unit<const Id extends string>(
  id: Id,
  text: string,
  quantity: SeriesId,
  sd: number,
  toLibrary: (value: number) => number = same,
): ColumnUnit & { readonly id: Id } {
  return { id, text, quantity, sd, toLibrary };
}

export type ColumnUnitId = (typeof COLUMN_UNITS)[number]["id"];
const UNIT_IDS: readonly ColumnUnitId[] = COLUMN_UNITS.map(({ id }) => id);

export function columnUnit(id: ColumnUnitId): ColumnUnit {
  const found = COLUMN_UNITS.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no unit of a column is called ${id}`);
  return found;
}

const column = counted("Column", { min: 0, max: CSV_LIMITS.columns - 1 });

/** How a file is read: which column is the time, in which zone, and what the others hold. */
export const csvChoices = z.strictObject({
  time: column,
  zone: z.string().max(60).refine(isZone, "Time zone is not one of the list, such as Europe/London"),
  values: z
    .array(z.strictObject({ column, unit: oneOf("What a column holds", UNIT_IDS) }))
    .min(1, "No column is chosen that holds readings")
    .max(CSV_LIMITS.columns),
  /** Lines that cannot be read are left out, which somebody has agreed to. */
  leaveOut: z.boolean(),
});
export type CsvChoices = z.output<typeof csvChoices>;

/** What the heading of a file lets guess. */
export function guessedChoices(header: readonly string[], zone: string): CsvChoices {
  const time = header.findIndex((name) => /time|date|zeit|stamp/i.test(name));
  const values = header.flatMap((name, index) => {
    const guessed = index === time ? null : guessedUnit(name);
    return guessed === null ? [] : [{ column: index, unit: guessed }];
  });
  return { time: Math.max(0, time), zone, values, leaveOut: false };
}

function guessedUnit(name: string): ColumnUnitId | null {
  if (/plato|°p|extract/i.test(name)) return "gravity plato";
  if (/gravity|\bsg\b/i.test(name)) return "gravity sg";
  if (/temp/i.test(name)) return /°?f\b|fahrenheit/i.test(name) ? "temperature f" : "temperature c";
  if (/psi/i.test(name)) return "pressure psi";
  if (/kpa/i.test(name)) return "pressure kpa";
  if (/press|\bbar\b/i.test(name)) return "pressure bar";
  return /\bph\b/i.test(name) ? "ph" : null;
}
