import { describe, expect, it } from "vitest";
import { changedQuantities } from "@/lib/calc/adapt/changed-quantities";
import type { Ledger } from "@/lib/calc/ledger";
import { brewed } from "../../support/brewed";

const ledger = brewed();

const withQuantities = (changed: Partial<Ledger["quantities"]>): Ledger => ({
  ...ledger,
  quantities: { ...ledger.quantities, ...changed },
});

describe("the numbers that change", () => {
  it("are none between a ledger and itself", () => {
    expect(changedQuantities(ledger, ledger)).toEqual([]);
  });

  it("are those that come, go, or move by more than a hundred-thousandth of the larger", () => {
    const before = withQuantities({
      "mash.ph": 5.4,
      "mash.firstWort": null,
      "mash.time": 100_000,
      "day.energy": 1,
      "water.calcium": 0,
    });
    const after = withQuantities({
      "mash.ph": null,
      "mash.firstWort": 18,
      "mash.time": 100_001,
      "day.energy": 1.00002,
      "water.calcium": 0,
    });
    expect(changedQuantities(before, after)).toEqual([
      { quantity: "mash.firstWort", before: null, after: 18 },
      { quantity: "mash.ph", before: 5.4, after: null },
      { quantity: "day.energy", before: 1, after: 1.00002 },
    ]);
  });

  it("stay out where both have no value, or the difference is small against the larger one only", () => {
    const none = withQuantities({ "mash.ph": null });
    expect(changedQuantities(none, none)).toEqual([]);
    const pair = [withQuantities({ "mash.time": 0 }), withQuantities({ "mash.time": 1 })] as const;
    expect(changedQuantities(...pair)).toEqual([{ quantity: "mash.time", before: 0, after: 1 }]);
  });
});
