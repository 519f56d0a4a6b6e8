import { randomUUID } from "node:crypto";
import { joining } from "@/lib/model/participation";
import { DAY_MS, dayOf } from "@/lib/model/plain-day";
import { AS_WRITTEN } from "@/lib/model/shared-brew-rules";
import { newComparison } from "@/lib/model/summary/saved-comparison";
import { saveComparison } from "@/lib/server/comparisons/writes";
import { changePlan } from "@/lib/server/shared-brews/change-plan";
import { joinSharedBrew } from "@/lib/server/shared-brews/participants";
import { createSharedBrew } from "@/lib/server/shared-brews/writes";
import type { Member } from "@/lib/server/session";

const ZONE = "Europe/London";

const inDays = (days: number): string => dayOf(new Date(Date.now() + days * DAY_MS));

/** The first version of the plan: a fortnight in autumn, the beer of the recipe. */
export async function callDemoBrew(organiser: Member, recipeId: string): Promise<string> {
  const window = { from: inDays(-45), to: inDays(-32) };
  const call = { recipeId, rev: 1, title: "Autumn shared brew: Millrace Pale Ale", window, rules: AS_WRITTEN };
  return (await createSharedBrew(organiser, call)).id;
}

/** Somebody takes part who has not brewed yet; a day is given by how far ahead it is. */
export async function joinDemoBrew(
  member: Member,
  a: { readonly sharedBrewId: string; readonly equipmentId: string; readonly ahead?: number; readonly water?: object },
): Promise<void> {
  const { sharedBrewId, equipmentId, ahead, water = null } = a;
  const brewDay = ahead === undefined ? null : { day: inDays(ahead), time: "09:30", zone: ZONE };
  const planVersion = ahead === undefined ? 1 : 2;
  await joinSharedBrew(member, joining.parse({ sharedBrewId, equipmentId, brewDay, water, yeast: "", planVersion }));
}

/** The second version: late brewers get three more weeks, and all pitch from one lot. */
export async function changeDemoPlan(organiser: Member, sharedBrewId: string): Promise<void> {
  const outcome = await changePlan(organiser, {
    id: sharedBrewId,
    baseVersion: 1,
    rev: 1,
    state: "open",
    window: { from: inDays(-45), to: inDays(21) },
    rules: {
      ...AS_WRITTEN,
      water: "same treated water",
      yeast: { same: true, lot: "Hollowmere house ale, slant 12" },
      words: "Pitch within an hour of the end of chilling",
    },
    note: "Two kettles were not ready, and the yeast has come from one slant",
  });
  if (!outcome.ok) throw new Error(`the demo's plan was not changed: ${outcome.reason}`);
}

/** A question that the demo club keeps: what its kettles leave behind. */
export async function keepDemoComparison(member: Member): Promise<void> {
  const question = { quantity: "stand.lost", as: "difference", group: "kettle", sharedBrew: "" };
  const limits = { recipe: "", brewer: "", state: "", from: "", to: "" };
  await saveComparison(
    member,
    newComparison.parse({ id: randomUUID(), name: "What stays behind, kettle by kettle", ...question, ...limits }),
  );
}

/** An invented hard water, mg/L. */
export const DEMO_HARD_WATER = {
  calcium: 98,
  magnesium: 11,
  sodium: 24,
  sulfate: 62,
  chloride: 41,
  bicarbonate: 240,
};
