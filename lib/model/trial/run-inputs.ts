import { waterDensity } from "@/lib/calc/gravity";
import { boilingPoint } from "@/lib/calc/heat";
import type {
  BoilOffRun,
  ChillRun,
  CounterflowRun,
  HeatingRun,
  LeftBehind,
  Pour,
  Stated,
  TimedTemperature,
} from "@/lib/calc/learn";
import type { Equipment } from "@/lib/calc/ledger";
import {
  celsius,
  kilograms,
  litres,
  litresPerMinute,
  squareMetres,
  type Celsius,
  type Kilograms,
} from "@/lib/calc/units";
import type { ChillConditions, HeatConditions, TrialEntry } from "./trial-entry";
import { timeOf, type TrialRun } from "./trial-log";

/** Water boils here; the fits of evaporation and density end at 102 and 100 °C. */
export function boilsAt({ altitude }: Equipment): Celsius {
  return celsius(Math.min(101.9, boilingPoint({ altitudeM: altitude })));
}

/** Water that was measured in litres at a temperature, by mass. */
function waterOf(c: Pick<HeatConditions, "litres" | "litresSd" | "waterC">): Stated<Kilograms> {
  const density = waterDensity(c.waterC);
  return { value: kilograms(c.litres * density), sd: c.litresSd * density };
}

function entriesOf<K extends TrialEntry["kind"]>(
  run: TrialRun,
  kind: K,
): readonly Extract<TrialEntry, { readonly kind: K }>[] {
  return run.readings.flatMap(({ entry }) =>
    entry.kind === kind ? [entry as Extract<TrialEntry, { readonly kind: K }>] : [],
  );
}

function secondsSince(first: TrialEntry | undefined, entry: TrialEntry): number {
  return first === undefined ? 0 : (timeOf(entry) - timeOf(first)) / 1000;
}

function temperaturesOf(run: TrialRun): readonly TimedTemperature[] {
  const entries = entriesOf(run, "temperature");
  return entries.map((entry) => ({
    seconds: secondsSince(entries[0], entry),
    celsius: entry.value,
    sd: entry.payload.sd,
  }));
}

/** A heated or cooling run as the library takes it; null until somebody has said how much water it is. */
export function heatingRun(run: TrialRun, { kettle }: Equipment): HeatingRun | null {
  const stated = run.conditions?.entry;
  if (stated?.kind !== "conditions" || (stated.part !== "heating" && stated.part !== "cooling")) return null;
  const c = stated.payload;
  return {
    kind: stated.part,
    water: waterOf(c),
    openAreaM2: c.lid ? squareMetres(0) : kettle.openArea,
    ambientC: c.airC,
    relativeHumidity: c.humidity,
    readings: temperaturesOf(run),
  };
}

export function boilOffRun(run: TrialRun): BoilOffRun {
  const entries = entriesOf(run, "volume");
  const readings = entries.map((entry) => ({
    seconds: secondsSince(entries[0], entry),
    litres: entry.value,
    celsius: entry.payload.celsius,
    sd: entry.payload.sd,
  }));
  return { readings };
}

export function leftBehind(run: TrialRun): readonly LeftBehind[] {
  return entriesOf(run, "volume").map(({ value, payload }) => ({ litres: value, ...payload }));
}

export function chillRun(run: TrialRun): ChillRun | null {
  const c = chillConditionsOf(run);
  if (c === null) return null;
  return {
    water: waterOf(c),
    ambientC: c.airC,
    coolantC: { value: c.coolantC, sd: c.coolantSd },
    coolantFlow: { value: litresPerMinute(c.flow), sd: c.flowSd },
    readings: temperaturesOf(run),
  };
}

function chillConditionsOf(run: TrialRun): ChillConditions | null {
  const stated = run.conditions?.entry;
  return stated?.kind === "conditions" && stated.part === "chill" ? stated.payload : null;
}

/** Each time that hot water ran through a counterflow chiller. */
export function counterflowRuns(run: TrialRun): readonly CounterflowRun[] {
  return entriesOf(run, "through").map(({ value, payload: p }) => ({
    water: { value: kilograms(p.litres * waterDensity(celsius(20))), sd: p.litresSd },
    seconds: 60 * p.minutes,
    hotC: { value: p.hotC, sd: p.sd },
    outC: { value, sd: p.sd },
    coolantC: { value: p.coolantC, sd: p.sd },
    coolantFlow: { value: litresPerMinute(p.flow), sd: p.flowSd },
  }));
}

export function pours(run: TrialRun): readonly Pour[] {
  return entriesOf(run, "mark").map(({ value, payload }) => ({
    litres: litres(payload.litres),
    sd: payload.sd,
    reading: value,
    readingSd: payload.readingSd,
  }));
}
