import { randomUUID } from "node:crypto";
import type { LogEvent } from "@/lib/model/log/log-event";
import { logEventInput } from "@/lib/model/log/log-event-input";
import type { NewBrew } from "@/lib/model/brew-input";
import { planBrew } from "@/lib/server/brews/plan";
import { createEquipment } from "@/lib/server/equipment/writes";
import { storeWhole } from "@/lib/server/log/ingest";
import { createRecipe } from "@/lib/server/recipes/writes";
import type { Member } from "@/lib/server/session";
import { brewOf, parsedEquipment, parsedRecipe } from "./brewing";
import { sampleRecipe } from "./sample-recipe";

const HOUR_MS = 3_600_000;
/** When the sample fermentation is pitched. */
export const PITCHED = Date.parse("2026-03-01T18:00:00Z");

/** A moment so many days after pitching. */
export const onDay = (day: number): Date => new Date(PITCHED + day * 24 * HOUR_MS);

const stamp = (brewId: string, day: number) => ({
  id: randomUUID(),
  brewId,
  deviceId: randomUUID(),
  deviceSeq: 1,
  occurredAt: onDay(day).toISOString(),
});

export const pitchOf = (brewId: string): LogEvent =>
  logEventInput.parse({
    ...stamp(brewId, 0),
    ...{ kind: "pitch", yeast: "Ale yeast", cells: 200, starterL: 1, celsius: 19, note: "" },
  });

/** A hydrometer reading, °P. */
export const gravityOf = (brewId: string, day: number, value: number, change: object = {}): LogEvent =>
  logEventInput.parse({
    ...stamp(brewId, day),
    ...{ kind: "gravity", quantity: "fermenter.gravity", value, sd: 0.1, instrument: "hydrometer" },
    ...{ sampleC: 20, note: "", entered: `${String(value)} °P`, step: null },
    ...change,
  });

/** What went into bottles that are made for it; a test changes one thing. */
export const packageOf = (brewId: string, change: object = {}): LogEvent =>
  logEventInput.parse({
    ...stamp(brewId, 20),
    kind: "package",
    containers: [{ name: "500 mL bottle", litres: 0.5, count: 38, ratedBar: 5 }],
    ...{ volumesCo2: 2.4, method: "priming", sugar: "sucrose", sugarGrams: 120, celsius: 20, storageC: 25 },
    ...{ lostL: 1, override: null, early: null, note: "" },
    ...change,
  });

/** Gravities of a fermentation that has come to its end: 12 °P down to 2.9, which stands. */
export const ENDED: readonly (readonly [day: number, plato: number])[] = [
  [1, 10.8],
  [2, 7.9],
  [3, 5.1],
  [5, 3.2],
  [9, 2.9],
  [12, 2.9],
];

/** A brew of the sample recipe, changed, that is in the fermenter with these gravities. */
export async function newFermentation(
  brewer: Member,
  {
    recipe = {},
    gravities = [],
  }: { readonly recipe?: object; readonly gravities?: readonly (readonly [number, number])[] },
): Promise<string> {
  const { id: recipeId } = await createRecipe(brewer, parsedRecipe());
  const { id: equipmentId } = await createEquipment(brewer, parsedEquipment());
  const order: NewBrew = brewOf({ recipeId, equipmentId, sharedBrewId: null }, recipe);
  const { id } = await planBrew(brewer, order);
  const events = [pitchOf(id), ...gravities.map(([day, plato]) => gravityOf(id, day, plato))];
  const refused = await storeWhole(brewer, events);
  if (refused !== null) throw new Error(refused);
  return id;
}

/** The sample recipe's hops with another that goes in dry. */
export const withDryHop = (): object => ({
  hops: [...sampleRecipe().hops, { name: "Dry hop", grams: 60, alpha: 0.06, use: "dry", minutes: 0 }],
});
