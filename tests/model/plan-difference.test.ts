import { describe, expect, it } from "vitest";
import { planDifferences } from "@/lib/model/plan-difference";
import { dayWindow } from "@/lib/model/plain-day";
import type { Plan } from "@/lib/model/shared-brew";
import { AS_WRITTEN, rulesInWords } from "@/lib/model/shared-brew-rules";

const plan: Plan = {
  recipeRev: 1,
  state: "open",
  window: { from: "2027-03-14", to: "2027-03-28" },
  rules: AS_WRITTEN,
};

describe("planDifferences", () => {
  it("finds none between a plan and itself", () => {
    expect(planDifferences(plan, structuredClone(plan))).toEqual([]);
  });

  it.each([
    [{ recipeRev: 2 }, "Revision 2 of the recipe instead of revision 1"],
    [{ state: "closed" }, "The shared brew is closed; it was open"],
    [{ window: null }, "Brew day: no day yet instead of Sun, 14 Mar 2027 to Sun, 28 Mar 2027"],
    [{ window: { from: "2027-03-14", to: "2027-03-14" } }, "Brew day: Sun, 14 Mar 2027 instead of"],
    [{ rules: { ...AS_WRITTEN, volume: true } }, "Now held for all: volume into the fermenter"],
    [{ rules: { ...AS_WRITTEN, bitterness: false } }, "No longer held: bitterness (hops by the litre as written"],
    [
      { rules: { ...AS_WRITTEN, water: "own water" } },
      "Water: everybody’s own water, without salts; before, water and",
    ],
    [
      { rules: { ...AS_WRITTEN, yeast: { same: true, lot: "7" } } },
      "Yeast: The same yeast, lot 7; before, The yeast of",
    ],
    [{ rules: { ...AS_WRITTEN, yeast: { same: false, lot: "" } } }, "Yeast: Everybody’s own yeast; before"],
    [{ rules: { ...AS_WRITTEN, words: "Pitch cold" } }, "Rules in words: Pitch cold"],
  ] as const)("says of %j: %s", (change, words) => {
    const found = planDifferences(plan, { ...plan, ...change });
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(words);
  });

  it("leaves no rule unsaid", () => {
    // Each rule turned round changes what is said of the plan.
    const loose = { ...AS_WRITTEN, originalExtract: false, bitterness: false, colour: false, mashPh: false };
    expect(rulesInWords(loose)).toHaveLength(5 + 2);
    expect(rulesInWords({ ...AS_WRITTEN, volume: true, words: "Pitch cold" })).toEqual([
      "Same for all: volume into the fermenter, original extract, bitterness, colour, mash pH",
      "Water and salts as in the recipe",
      "The yeast of the recipe",
      "Pitch cold",
    ]);
  });
});

describe("dayWindow", () => {
  it.each([
    [{ from: "2027-03-14", to: "2027-03-13" }, { to: "Last day is before the first day" }],
    [{ from: "2027-03-14", to: "2028-03-15" }, { to: "Last day is more than 366 days after the first day" }],
    [{ from: "2027-13-14", to: "2027-03-15" }, { from: "First day “2027-13-14” is not a day of the calendar" }],
    [{ from: "", to: "2027-03-15" }, { from: "First day is empty" }],
  ])("refuses %j", (window, messages) => {
    const issues = dayWindow.safeParse(window).error?.issues ?? [];
    const first = new Map(issues.toReversed().map(({ path, message }) => [path.join("."), message]));
    expect(Object.fromEntries(first)).toEqual(messages);
  });

  it("takes a year and a day, and a single day", () => {
    for (const to of ["2028-03-14", "2027-03-14"]) {
      expect(dayWindow.safeParse({ from: "2027-03-14", to }).success, to).toBe(true);
    }
  });
});
