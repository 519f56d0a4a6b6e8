import { randomBytes } from "node:crypto";
import { uuidV7 } from "@/lib/ui/brew/uuid-v7";

/** Specific heat of water that the library reckons with, J/(kg·K). */
const WATER_J = 4186.8;
/** Density of water at 20 °C, kg/L: IAPWS-95. */
const KG_PER_L = 0.998207;

/** Ten in the morning of a day that is over. */
const BEGUN = Date.parse("2026-11-07T10:00:00Z");
let made = 0;

/** An entry as a page sends it; each one is made a millisecond after the one before. */
export function entryOf(change: object): { readonly id: string } {
  made += 1;
  const usual = {
    id: uuidV7(BEGUN + made, randomBytes(10)),
    ...{ part: "heating", run: 1, kind: "temperature", value: 20, payload: { sd: 0.3 }, replaces: null },
    occurredAt: new Date(BEGUN).toISOString(),
  };
  return { ...usual, ...change };
}

const HEATED = { litres: 25, litresSd: 0.1, waterC: 20, airC: 18, humidity: 0.5, lid: true };

function conditionsOf(part: "heating" | "cooling", change: object = {}): { readonly id: string } {
  const entry = entryOf({ part, kind: "conditions", payload: { ...HEATED, ...change } });
  return Object.fromEntries(Object.entries(entry).filter(([key]) => key !== "value")) as typeof entry;
}

/** Readings of a kettle of known power and loss by the closed form of first-order heating or cooling. */
export function courseOf(a: {
  readonly part: "heating" | "cooling";
  readonly powerW: number;
  readonly lossWPerK: number;
  readonly vesselJPerK: number;
  readonly fromC: number;
  readonly minutes: readonly number[];
}): readonly { readonly id: string }[] {
  const heat = HEATED.litres * KG_PER_L * WATER_J + a.vesselJPerK;
  const endC = HEATED.airC + (a.part === "heating" ? a.powerW / a.lossWPerK : 0);
  return [
    conditionsOf(a.part),
    ...a.minutes.map((minute) =>
      entryOf({
        part: a.part,
        occurredAt: new Date(BEGUN + 60_000 * minute).toISOString(),
        value: endC + (a.fromC - endC) * Math.exp((-a.lossWPerK * 60 * minute) / heat),
      }),
    ),
  ];
}
