import type { Ledger } from "@/lib/calc/ledger";
import { interpolateLinear } from "@/lib/calc/numerics";
import type { Brew } from "./brew";

const MINUTE_MS = 60_000;

/** What is read so long before the plan begins or after it ends belongs to another day. */
const BEFORE_MIN = 60;
const AFTER_MIN = 180;

/** A temperature that was read on the brew day, with what was planned for that minute. */
export interface DayTemperature {
  readonly id: string;
  readonly minute: number;
  readonly celsius: number;
  readonly plannedC: number | null;
}

/** The temperatures of mash and kettle that were read, in order of time. */
export function dayTemperatures(
  { startedAt, log }: Pick<Brew, "startedAt" | "log">,
  { temperatureCurve }: Pick<Ledger, "temperatureCurve">,
): readonly DayTemperature[] {
  if (startedAt === null) return [];
  const first = temperatureCurve[0]?.[0] ?? 0;
  const last = temperatureCurve.at(-1)?.[0] ?? 0;
  return log.readings
    .filter(({ measured, isVoid }) => !isVoid && isOfTheDay(measured.quantity))
    .map(({ id, at, measured }) => ({
      id,
      minute: (at - startedAt.getTime()) / MINUTE_MS,
      celsius: measured.value,
    }))
    .filter(({ minute }) => minute >= first - BEFORE_MIN && minute <= last + AFTER_MIN)
    .map((each) => ({ ...each, plannedC: plannedAt(temperatureCurve, each.minute) }))
    .toSorted((one, other) => one.minute - other.minute);
}

const isOfTheDay = (quantity: string): boolean => quantity === "kettle.temperature" || quantity === "water.strike";

function plannedAt(rows: Ledger["temperatureCurve"], minute: number): number | null {
  const [first, last] = [rows[0], rows.at(-1)];
  if (first === undefined || last === undefined || minute < first[0] || minute > last[0]) return null;
  return interpolateLinear({ quantity: "time", unit: "min", rows, x: minute });
}
