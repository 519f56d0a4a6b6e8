import { describe, expect, it } from "vitest";
import { differenceIntervals, intervals, QUANTITY_IDS, type Interval } from "@/lib/calc/ledger";
import { kilograms } from "@/lib/calc/units";
import { brewed, brewInput } from "../../support/brewed";
import { paleAle } from "../../support/brewing-fixtures";

const half = ({ low80, high80 }: Interval): number => (high80 - low80) / 2;

const before = brewInput();
const after = {
  ...before,
  recipe: {
    ...paleAle,
    fermentables: paleAle.fermentables.map((row) => ({ ...row, kg: kilograms(row.kg * 1.1) })),
  },
};
/** The same kettle under another name is another kettle: what it is off by, nobody has compared. */
const elsewhere = { ...after, equipment: { ...after.equipment, name: "Another of the kind" } };

describe("differenceIntervals", () => {
  it("is nothing around nothing for a brew and itself", () => {
    for (const interval of Object.values(differenceIntervals({ before, after: before }))) {
      expect(interval).toEqual({ low80: 0, high80: 0 });
    }
  });

  it("lies around the difference, and turns its sign with the order", () => {
    const there = differenceIntervals({ before, after });
    const back = differenceIntervals({ before: after, after: before });
    const [one, other] = [brewed(before), brewed(after)];
    for (const id of QUANTITY_IDS) {
      const interval = there[id];
      if (interval === undefined) continue;
      const apart = (other.quantities[id] ?? NaN) - (one.quantities[id] ?? NaN);
      expect((interval.low80 + interval.high80) / 2, id).toBeCloseTo(apart, 9);
      expect(back[id]?.low80, id).toBeCloseTo(-interval.high80, 9);
    }
    expect(there["fermenter.originalExtract"]?.low80).toBeGreaterThan(0);
  });

  it("of what shares nothing but its malt and hops adds up as squares at most, and of one kettle is surer", () => {
    const id = "kettle.heatingTime"; // hangs on the kettle, and on the malt by a hundredth of a minute
    const separate = differenceIntervals({ before, after: elsewhere })[id];
    const shared = differenceIntervals({ before, after })[id];
    const [one, other] = [intervals(before)[id], intervals(elsewhere)[id]];
    if (separate === undefined || shared === undefined || one === undefined || other === undefined) throw new Error(id);
    expect(half(separate)).toBeCloseTo(Math.hypot(half(one), half(other)), 2);
    expect(half(shared)).toBeLessThan(half(separate) / 2);
  });

  it("is never wider than both intervals together", () => {
    const [one, other] = [intervals(before), intervals(elsewhere)];
    const apart = differenceIntervals({ before, after: elsewhere });
    for (const id of QUANTITY_IDS) {
      const [a, b, both] = [one[id], other[id], apart[id]];
      if (a !== undefined && b !== undefined && both !== undefined) {
        expect(half(both), id).toBeLessThanOrEqual(half(a) + half(b) + 1e-9);
      }
    }
  });
});
