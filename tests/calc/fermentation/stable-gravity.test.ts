import { describe, expect, it } from "vitest";
import { stableGravity, type LoggedGravity, type StableGravity } from "@/lib/calc/fermentation";
import { degreesPlato } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const at = (day: number, plato: number, sd = 0.1): LoggedGravity => ({ day, plato: degreesPlato(plato), sd });
const stable = (
  points: readonly LoggedGravity[],
  expected: readonly [plato: number, sd: number] | null = null,
): StableGravity =>
  stableGravity({
    points,
    expectedFinal: expected === null ? null : { plato: degreesPlato(expected[0]), sd: expected[1] },
  });
const no = (reason: string): object => ({ ok: false, reason });

describe("stableGravity", () => {
  it("says yes to 3.1 and 3.0 °P three days apart, and what the instrument could hide (Balling, by hand)", () => {
    const result = stable([at(9, 3.1), at(12, 3)]);
    if (!result.ok) throw new Error(result.reason);
    expectWithin(result.plato, 3.05, 1e-12);
    // 2 × √2 × 0.1 = 0.28284 °P of doubt and 0.1 °P of fall; a °P is 8.192 g of real extract in a kilogram, of which
    // 0.9565/2.0665 become CO2: 3.7918 g. 0.38284 × 3.7918.
    expectWithin(result.hiddenCo2G, 1.4516, 0.0005);
  });

  it("does not count a rise within the uncertainty as a fall that is over", () => {
    const result = stable([at(9, 3), at(12, 3.1)]);
    if (!result.ok) throw new Error(result.reason);
    expectWithin(result.hiddenCo2G, 0.28284 * 3.7918, 0.0005);
  });

  it("takes the readings in order of time, the last against the latest at least two days older", () => {
    expect(stable([at(12, 3), at(9, 3.1)]).ok).toBe(true);
    expect(stable([at(8, 5), at(10, 3), at(12, 3)]).ok).toBe(true);
    expect(stable([at(8, 5), at(11, 3), at(12, 3)])).toEqual(no("still-falling"));
    expect(stable([at(10, 3), at(12, 3)]).ok).toBe(true);
  });

  it("says no to a fall, and to a rise, beyond twice the combined uncertainty", () => {
    expect(stable([at(9, 3.28), at(12, 3)]).ok).toBe(true);
    expect(stable([at(9, 3.29), at(12, 3)])).toEqual(no("still-falling"));
    expect(stable([at(9, 3), at(12, 3.28)]).ok).toBe(true);
    expect(stable([at(9, 3), at(12, 3.29)])).toEqual(no("rising"));
  });

  it("says no to beer that may be stuck above its expected end", () => {
    // 2 × √(0.1² + 0.4²) = 0.8246 °P.
    expect(stable([at(9, 3.82), at(12, 3.82)], [3, 0.4]).ok).toBe(true);
    expect(stable([at(9, 3.83), at(12, 3.83)], [3, 0.4])).toEqual(no("above-expected"));
    expect(stable([at(9, 1.5), at(12, 1.5)], [3, 0.4]).ok).toBe(true);
  });

  it("says no to readings too few, too near in time or too coarse to see a fall", () => {
    expect(stable([])).toEqual(no("too-few-points"));
    expect(stable([at(12, 3)])).toEqual(no("too-few-points"));
    expect(stable([at(10.1, 3), at(12, 3)])).toEqual(no("too-soon"));
    expect(stable([at(9, 3, 0.3), at(12, 3, 0.3)]).ok).toBe(true);
    expect(stable([at(9, 3, 0.31), at(12, 3)])).toEqual(no("too-coarse"));
    expect(stable([at(9, 3), at(12, 3, 0.31)])).toEqual(no("too-coarse"));
  });

  it("refuses what was never read", () => {
    expect(() => stable([{ ...at(9, 3), day: -1 }])).toThrow("day of the reading -1 d is outside 0 to 180 d");
    expect(() => stable([{ ...at(9, 3), plato: NaN as never }])).toThrow("logged gravity NaN °P is outside -9 to 35");
    expect(() => stable([at(9, 3, 3)])).toThrow("uncertainty of the reading 3 °P is outside 0.005 to 2 °P");
    expect(() => stable([], [36, 0.4])).toThrow("expected final extract 36 °P is outside -9 to 35 °P");
    expect(() => stable([], [3, 0])).toThrow("uncertainty of the expected extract 0 °P is outside 0.005 to 2 °P");
  });
});
