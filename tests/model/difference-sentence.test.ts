import { describe, expect, it } from "vitest";
import type { QuantityCauses } from "@/lib/calc/compare";
import { differenceSentence } from "@/lib/model/difference-sentence";

const points = (size: number): string => `${(4 * size).toFixed(1)} points`;

/** Invented figures, °P; a quarter of a degree is a point here. */
const causes = (changes: Partial<QuantityCauses>): QuantityCauses => ({
  quantity: "fermenter.originalExtract",
  planned: 12,
  actual: 10.975,
  actualSd: 0.1,
  isDoubted: false,
  difference: -1.025,
  parts: [
    { id: "mash", value: 0, sd: 0.2, isMore: false },
    { id: "lauter", value: -0.8, sd: 0.1, isMore: true },
    { id: "volume", value: -0.225, sd: 0.05, isMore: true },
    { id: "boil", value: 0.25, sd: 0.1, isMore: true },
    { id: "left", value: 0, sd: 0, isMore: false },
    { id: "fermentation", value: 0, sd: 0, isMore: false },
  ],
  reading: -0.25,
  named: [],
  ...changes,
});

describe("the sentence about a difference", () => {
  it("names the causes that are told, the largest first, and leaves the rest to the uncertainty", () => {
    const named = [
      { ids: ["volume"] as const, value: -0.225, sd: 0.05 },
      { ids: ["lauter"] as const, value: -0.8, sd: 0.1 },
    ];
    expect(differenceSentence(causes({ named }), points)).toBe(
      "Original gravity 4.1 points low: 3.2 points from more extract left in the grain, 0.9 points from a larger volume before the boil; the rest is within what the readings can tell.",
    );
  });

  it("says of a cause that pulled the other way that it did", () => {
    const named = [
      { ids: ["lauter"] as const, value: -0.8, sd: 0.1 },
      { ids: ["boil"] as const, value: 0.25, sd: 0.1 },
    ];
    expect(differenceSentence(causes({ named }), points)).toContain("1.0 points the other way from more boiled off");
  });

  it("names together what only together is told", () => {
    const named = [{ ids: ["mash", "lauter"] as const, value: -0.8, sd: 0.1 }];
    expect(differenceSentence(causes({ named }), points)).toContain("3.2 points from the mash and the lauter together");
  });

  it("blames nobody where no cause is told, and where there is no difference to speak of", () => {
    expect(differenceSentence(causes({}), points)).toBe(
      "Original gravity 4.1 points low; the readings cannot tell from where.",
    );
    expect(differenceSentence(causes({ difference: -0.15 }), points)).toBe(
      "Original gravity as planned, as far as the readings can tell: 0.6 points low, known to ± 0.8 points.",
    );
  });

  it("says when a number is not the one that was read", () => {
    expect(differenceSentence(causes({ isDoubted: true }), points)).toMatch(
      /^Original gravity, by the other readings, 4.1/,
    );
  });
});
