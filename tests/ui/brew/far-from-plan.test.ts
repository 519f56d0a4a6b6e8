import { describe, expect, it } from "vitest";
import type { Preferences } from "@/lib/model/preferences";
import { farFromPlan } from "@/lib/ui/brew/far-from-plan";

const METRIC: Preferences = { units: "metric", gravity: "plato", colour: "ebc", theme: "auto" };
const expected = { value: 12, interval: { low80: 11.5, high80: 12.5 } };
const ask = (value: number, plan: typeof expected | null = expected): string | null =>
  farFromPlan({ value, sd: 0.25, expected: plan, dimension: "extract", preferences: METRIC });

describe("farFromPlan", () => {
  it("asks about a reading far above or below the plan, in the reader's unit", () => {
    expect(ask(18)).toBe("That is 6.0 °P above the plan. Keep it?");
    expect(ask(6)).toBe("That is 6.0 °P below the plan. Keep it?");
  });

  it("asks nothing inside what plan and instrument allow, and nothing without a plan", () => {
    expect(ask(12.5)).toBeNull();
    expect(ask(18, null)).toBeNull();
  });

  it("asks nothing of a reading that misses an exact plan by a few per cent", () => {
    const decided = { value: 72, interval: null };
    const strike = { sd: 0.5, expected: decided, dimension: "temperature", preferences: METRIC } as const;
    expect(farFromPlan({ value: 74, ...strike })).toBeNull();
    expect(farFromPlan({ value: 60, ...strike })).toBe("That is 12.0 °C below the plan. Keep it?");
  });
});
