import { describe, expect, it } from "vitest";
import { nextStep, type SpaceState } from "@/app/s/[space]/next-step";
import type { BrewSummary } from "@/lib/model/brew";
import type { EquipmentProfile } from "@/lib/model/equipment";
import { garageKettle } from "../support/brewing-fixtures";

const member = { userId: "ada", role: "member", spaceSlug: "club" } as const;
const recipe = { id: "r1", title: "Bitter", headRev: 1, authorName: "Ada", changedAt: new Date(0) };
const shared = {
  id: "s1",
  title: "Spring brew",
  recipeId: "r1",
  recipeRev: 1,
  state: "open",
  plannedAt: null,
  window: null,
  version: 1,
  participantIds: [],
} as const;
const kettle: EquipmentProfile = {
  id: "k1",
  ownerId: "ada",
  ownerName: "Ada",
  rev: 1,
  equipment: { ...garageKettle, name: "Garage kettle" },
  mayWrite: true,
};
const brew: BrewSummary = {
  id: "b1",
  title: "Bitter",
  recipeId: "r1",
  recipeRev: 1,
  sharedBrewId: null,
  brewerId: "ada",
  brewerName: "Ada",
  equipmentName: "Garage kettle",
  state: "planned",
  startedAt: null,
};

function next(state: Partial<SpaceState>): string | undefined {
  return nextStep({ member, recipes: [recipe], kettles: [kettle], brews: [], sharedBrews: [], ...state })?.href;
}

describe("nextStep", () => {
  it("puts the brew on the kettle before everything else", () => {
    const hot: BrewSummary = { ...brew, id: "b2", state: "on the kettle" };
    expect(next({ brews: [brew, hot], sharedBrews: [shared] })).toBe("/s/club/brews/b2");
  });

  it("leaves other people's brews to them", () => {
    expect(next({ brews: [{ ...brew, brewerId: "ben" }] })).toBeUndefined();
  });

  it("shows an open shared brew on the member's own kettle, until the member has a batch of it", () => {
    expect(next({ sharedBrews: [shared] })).toBe("/s/club/shared-brews/s1/kettles/k1");
    const joined: BrewSummary = { ...brew, sharedBrewId: "s1", state: "closed" };
    expect(next({ sharedBrews: [shared], brews: [joined] })).toBeUndefined();
  });

  it("asks for a kettle where the member has none", () => {
    expect(next({ kettles: [], sharedBrews: [shared] })).toBe("/s/club/equipment/new");
    expect(next({ kettles: [{ ...kettle, ownerId: "ben" }] })).toBe("/s/club/equipment/new");
  });

  it("asks for the first recipe", () => {
    expect(next({ recipes: [] })).toBe("/s/club/recipes/new");
  });

  it("comes back to the beer in the fermenter when nothing else waits", () => {
    expect(next({ brews: [{ ...brew, state: "in the fermenter" }] })).toBe("/s/club/brews/b1");
  });

  it("asks a judge for nothing but a look", () => {
    const judge = { ...member, role: "judge" } as const;
    expect(next({ member: judge, kettles: [], recipes: [] })).toBeUndefined();
    expect(next({ member: judge, kettles: [], sharedBrews: [shared] })).toBe("/s/club/shared-brews/s1");
  });
});
