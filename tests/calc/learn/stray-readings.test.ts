import { describe, expect, it } from "vitest";
import { strayReadings } from "@/lib/calc/learn/stray-readings";
import { brewInput } from "../../support/brewed";

const { equipment } = brewInput();

/** Two readings, each ±1, that a lot of malt moves together by 3. */
const twoReadings = (first: number) =>
  [
    { quantity: "kettle.preBoilGravity", residual: first, sd: 1, fresh: [3], figures: new Map() },
    { quantity: "fermenter.originalExtract", residual: 0, sd: 1, fresh: [3], figures: new Map() },
  ] as const;

// By hand: the covariance is 10 and 9. Given the second reading, the first one is 0.9 times that, with variance
// 10 − 81/10 = 1.9; three and a half standard deviations of it are 4.82.
describe("strayReadings", () => {
  it("takes out a reading that is too far from what the other makes of it", () => {
    expect(strayReadings(equipment, twoReadings(4.83))).toEqual(["kettle.preBoilGravity"]);
  });

  it("leaves one that is nearer, though each alone would be far from its plan by its own error", () => {
    expect(strayReadings(equipment, twoReadings(4.81))).toEqual([]);
  });

  it("takes both as they are where the lot explains them", () => {
    const [one, other] = twoReadings(8);
    expect(strayReadings(equipment, [one, { ...other, residual: 8 }])).toEqual([]);
  });
});
