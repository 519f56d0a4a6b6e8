import { brew, brewWithWater, type Ambient, type Equipment, type Ledger, type Recipe } from "@/lib/calc/ledger";
import { waterDensity } from "@/lib/calc/gravity";
import { celsius, kilograms } from "@/lib/calc/units";
import type { MeasurableId } from "@/lib/model/reading";
import type { ReadingInput } from "@/lib/model/reading-input";
import type { Noise } from "./noise";
import { trueKettle } from "./true-kettle";

type Instrument = ReadingInput["instrument"];

interface Point {
  readonly quantity: MeasurableId;
  readonly instrument: Instrument;
  readonly sd: number;
  readonly digits: number;
  readonly unit: string;
  /** When it is read: from the start of the brew day, or days after it. */
  readonly at: { readonly minute: number } | { readonly day: number };
}

/** What a careful member writes down, with the uncertainty of the instrument (common practice, no source). */
const POINTS: readonly Point[] = [
  { quantity: "water.mash", instrument: "measuring stick", sd: 0.15, digits: 1, unit: "L", at: { minute: 15 } },
  { quantity: "water.strike", instrument: "thermometer", sd: 0.4, digits: 1, unit: "°C", at: { minute: 50 } },
  { quantity: "mash.firstWort", instrument: "refractometer", sd: 0.3, digits: 1, unit: "°P", at: { minute: 125 } },
  { quantity: "kettle.preBoil", instrument: "sight glass", sd: 0.3, digits: 1, unit: "L", at: { minute: 190 } },
  { quantity: "kettle.preBoilGravity", instrument: "hydrometer", sd: 0.25, digits: 1, unit: "°P", at: { minute: 192 } },
  { quantity: "kettle.heatingTime", instrument: "clock", sd: 1.5, digits: 0, unit: "min", at: { minute: 215 } },
  { quantity: "kettle.postBoil", instrument: "sight glass", sd: 0.3, digits: 1, unit: "L", at: { minute: 276 } },
  { quantity: "fermenter.volume", instrument: "measuring stick", sd: 0.25, digits: 1, unit: "L", at: { minute: 320 } },
  {
    quantity: "fermenter.originalExtract",
    instrument: "hydrometer",
    sd: 0.25,
    digits: 1,
    unit: "°P",
    at: { minute: 322 },
  },
  { quantity: "fermenter.finalExtract", instrument: "hydrometer", sd: 0.25, digits: 1, unit: "°P", at: { day: 12 } },
  { quantity: "package.volume", instrument: "scale", sd: 0.2, digits: 1, unit: "L", at: { day: 16 } },
];

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

export type DemoReading = Omit<ReadingInput, "brewId">;

interface LogOrder {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly startedAt: Date;
  readonly noise: Noise;
  /** Up to which point the log goes; the whole of it when left out. */
  readonly until?: MeasurableId;
  /** A reading that is deliberately wrong, and by how much. */
  readonly wrong?: { readonly quantity: MeasurableId; readonly by: number };
}

/**
 * Makes the log of one brew: the planned water on the kettle as it really is, read with noisy instruments.
 *
 * Everything physical comes from `lib/calc`; only the noise and the hidden truth are invented.
 */
export function demoReadings(order: LogOrder): DemoReading[] {
  const { noise, startedAt, wrong } = order;
  const ledger = brewedInTruth(order);
  const deviceId = noise.uuid();
  const last = POINTS.findIndex((point) => point.quantity === order.until);
  const points = last === -1 ? POINTS : POINTS.slice(0, last + 1);
  return points.flatMap((point, i) => {
    const { quantity, sd, digits, unit, instrument, at } = point;
    const truth = ledger.quantities[quantity];
    if (truth === null) return [];
    const off = wrong?.quantity === quantity ? wrong.by : 0;
    const value = Number((truth + off + sd * noise.normal()).toFixed(digits));
    const afterMs = "day" in at ? at.day * DAY_MS : at.minute * MINUTE_MS;
    return {
      id: noise.uuid(),
      deviceId,
      deviceSeq: i + 1,
      quantity,
      value,
      sd,
      instrument,
      sampleC: instrument === "hydrometer" ? celsius(20) : null,
      occurredAt: new Date(startedAt.getTime() + afterMs),
      note: "",
      entered: `${value.toFixed(digits)} ${unit}`,
    };
  });
}

function brewedInTruth({ recipe, equipment, ambient, noise }: LogOrder): Ledger {
  const planned = brew({ recipe, equipment, ambient });
  if (!planned.ok) throw new Error(`the demo brew is not possible: ${planned.reason}`);
  const water = waterDensity(celsius(20));
  const outcome = brewWithWater({
    recipe,
    ambient,
    equipment: trueKettle(equipment, noise),
    mashWaterKg: kilograms((planned.ledger.quantities["water.mash"] ?? 0) * water),
    spargeKg: kilograms((planned.ledger.quantities["water.sparge"] ?? 0) * water),
  });
  if (!outcome.ok) throw new Error(`the demo brew is not possible in truth: ${outcome.reason}`);
  return outcome.ledger;
}
