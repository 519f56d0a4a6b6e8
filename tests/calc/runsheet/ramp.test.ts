import { describe, expect, it } from "vitest";
import { rampOutlook } from "@/lib/calc/runsheet/ramp";
import { expectPrinted } from "../../support/expect-printed";
import { doneUntil, left, planned, record } from "./hand-made-day";

/** 60 K in an hour, from minute 100 on. */
const RAMP = { startMin: 100, plannedMin: 60, fromC: 20, toC: 80 };

const read = (...readings: readonly (readonly [atMin: number, celsius: number])[]): ReturnType<typeof rampOutlook> =>
  rampOutlook(
    RAMP,
    readings.map(([atMin, celsius]) => ({ atMin, celsius })),
  );

describe("a ramp", () => {
  it("without a reading of its own is too early to tell", () => {
    expect(read()).toEqual({ kind: "too early to tell" });
    expect(read([99.9, 75])).toEqual({ kind: "too early to tell" });
  });

  it("counts a reading at the moment it begins", () => {
    // 23 °C when it begins instead of 20: 37 K in 20 min, 20 K to go: 120 + 10.81.
    const found = read([100, 23], [120, 60]);
    if (found.kind !== "arrives") throw new Error(found.kind);
    expectPrinted(found.endMin, "130.81");
  });

  it("has arrived exactly at its end, for certain", () => {
    expect(read([150, 80])).toEqual({ kind: "arrives", endMin: 150, sdMin: 0 });
    expect(read([150, 81])).toEqual({ kind: "arrives", endMin: 150, sdMin: 0 });
  });

  it("does not heat where it should have risen by 9 K and has not by 3 K, the bounds included", () => {
    expect(read([109, 22.9])).toEqual({ kind: "not heating", celsius: 22.9 });
    expect(read([108.9, 22.9])).toEqual({ kind: "too early to tell" });
    expect(read([109, 23]).kind).toBe("arrives");
    expect(read([130, 10])).toEqual({ kind: "not heating", celsius: 10 });
  });
});

describe("a reading outside a ramp", () => {
  const readings = [{ atMin: 100, celsius: 75 }];

  it("says nothing of a rest, of a ramp that is over, or before anything has begun", () => {
    const resting = [...doneUntil("rest"), record("rest", 70)];
    expect(planned(100, resting, { readings })).toEqual(planned(100, resting));
    const over = [...doneUntil("heat strike water"), record("heat strike water", 20, 60)];
    expect(planned(100, over, { readings })).toEqual(planned(100, over));
    expect(planned(100, [], { readings })).toEqual(planned(100, []));
  });

  it("counts from the last temperature on the sheet, not from an earlier one", () => {
    // From 66 °C at 150: 75 °C at 160 is 9 K in 10 min, 25 K to go: 160 + 27.78.
    const heating = [...doneUntil("heat to the boil"), record("heat to the boil", 150)];
    const plan = planned(160, heating, { readings: [{ atMin: 160, celsius: 75 }] });
    expectPrinted(left(plan, "heat to the boil").end.min, "187.78");
  });

  it("says nothing where the sheet does not tell from where or to where it heats", () => {
    const steps = planned(0, []).steps.map(({ state, start, end, ...step }) => ({ ...step, celsius: null }));
    const heating = [...doneUntil("heat to the boil"), record("heat to the boil", 150)];
    const plain = planned(160, heating, { steps });
    expect(planned(160, heating, { steps, readings: [{ atMin: 160, celsius: 75 }] })).toEqual(plain);
    const to = steps.map((step) => (step.name === "heat to the boil" ? { ...step, celsius: 100 } : step));
    expect(planned(160, heating, { steps: to, readings: [{ atMin: 160, celsius: 75 }] }).heatingPace).toBe(1);
  });
});
