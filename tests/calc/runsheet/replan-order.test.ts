import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { StepRecord } from "@/lib/calc/runsheet";
import { expectWithin } from "../../support/expect-within";
import { DAY, doneUntil, left, planned, record, replan } from "./hand-made-day";

const ids = (steps: readonly { readonly id: string }[]): string[] => steps.map(({ id }) => id);

/** Boiling since 175 as planned; the bittering hops are in. */
const boiling = [...doneUntil("boil"), record("boil", 175), record("bitter", 175, 175)];

describe("an addition", () => {
  it("whose time is over while it boils is named, and can still go in now", () => {
    const plan = planned(227, boiling);
    expect(plan.missed).toEqual([{ step: "late", names: ["Perle"], dueMin: 225, possible: true }]);
    expect(left(plan, "late")).toMatchObject({ startMin: 227, minutes: 0, state: "late" });
  });

  it("that is due this minute is not missed", () => {
    const plan = planned(225, boiling);
    expect(plan.missed).toEqual([]);
    expect(left(plan, "late")).toMatchObject({ startMin: 225, state: "to come" });
  });

  it("can still go in after the boil as long as nothing has begun after it", () => {
    const over = [...boiling.filter(({ step }) => step !== "boil-1"), record("boil", 175, 236)];
    const plan = planned(238, over);
    // By the end of the real boil it was due at 226.
    expect(plan.missed).toEqual([{ step: "late", names: ["Perle"], dueMin: 226, possible: true }]);
    const cooling = planned(238, [...over, record("cool to the stand", 237)]);
    expect(cooling.missed).toEqual([{ step: "late", names: ["Perle"], dueMin: 226, possible: false }]);
    expect(ids(cooling.steps)).not.toContain("late");
  });

  it("is not asked for again once it is in, or left out", () => {
    for (const done of [record("late", 226, 226), record("late", null), record("late", 226)]) {
      const plan = planned(227, [...boiling, done]);
      expect(plan.missed).toEqual([]);
      expect(ids(plan.steps)).not.toContain("late");
    }
  });

  it("is named when what it goes into is left out or has gone by", () => {
    const out = planned(180, [...doneUntil("boil"), record("boil", null)]);
    expect(out.missed.map(({ step, possible, dueMin }) => [step, possible, dueMin])).toEqual([
      ["bitter", false, 175],
      ["late", false, 225],
    ]);
    // The stand is still to come, and so are its hops.
    expect(ids(out.steps)).toContain("aroma");
    const passed = planned(262, [...doneUntil("hot-break watch"), record("chill", 260)]);
    expect(passed.missed.map(({ step }) => step)).toEqual(["bitter", "late", "aroma"]);
  });
});

describe("the watch over the hot break", () => {
  it("lies over the beginning of the real boil", () => {
    const plan = planned(200, [...doneUntil("heat to the boil"), record("heat to the boil", 180)]);
    // Heating ends at 210: five minutes before it until five after.
    expect(left(plan, "hot-break watch")).toMatchObject({ startMin: 205, minutes: 10, state: "to come" });
    const begun = planned(211, [
      ...doneUntil("heat to the boil"),
      record("heat to the boil", 180, 210),
      record("boil", 210),
    ]);
    expect(left(begun, "hot-break watch")).toMatchObject({ startMin: 205, minutes: 10, state: "running" });
  });

  it("is over five minutes into the boil, when it is ticked off, and when the boil has gone by", () => {
    const begun = [...doneUntil("hot-break watch"), record("boil", 175)];
    expect(ids(planned(179, begun).steps)).toContain("hot-break-watch-1");
    expect(ids(planned(180, begun).steps)).not.toContain("hot-break-watch-1");
    expect(ids(planned(176, [...begun, record("hot-break watch", 170, 176)]).steps)).not.toContain("hot-break-watch-1");
    expect(ids(planned(176, [...begun, record("hot-break watch", 170)]).steps)).toContain("hot-break-watch-1");
    const gone = [...doneUntil("hot-break watch"), record("cool to the stand", 176)];
    expect(ids(planned(176, gone).steps)).not.toContain("hot-break-watch-1");
  });
});

describe("steps that are left out or out of order", () => {
  it("take no time when they are left out", () => {
    const plan = planned(0, [record("stand", null), record("cool to the stand", null)]);
    expectWithin(left(plan, "chill").startMin, 235, 1e-9);
    expect(ids(plan.steps)).not.toContain("stand-1");
    expect(plan.missed.map(({ step }) => step)).toEqual(["aroma"]);
  });

  it("count as over when a later one has begun, and are named where nobody recorded them", () => {
    const plan = planned(130, [record("fill", 12, 20), record("rest", 70)]);
    expect(plan.passed).toEqual(["weigh-out-1", "heat-strike-water-1", "dough-in-1"]);
    expect(plan.steps[0]).toMatchObject({ id: "rest-1", state: "running" });
    // A step that was left running is over too, and was recorded.
    const open = planned(131, [...doneUntil("rest"), record("rest", 70), record("lift and drain", 130)]);
    expect(open.passed).toEqual([]);
    expect(open.steps[0]).toMatchObject({ id: "lift-and-drain-1" });
  });

  it("may be cleaning, which says nothing of the others", () => {
    const early = [...doneUntil("boil"), record("boil", 175), record("clean", 180)];
    const plan = planned(185, early);
    expect(plan.passed).toEqual([]);
    expect(left(plan, "clean")).toMatchObject({ startMin: 180, minutes: 40, state: "running" });
    expectWithin(plan.end.min, 300, 1e-9);
    expectWithin(plan.behindMin, -40, 1e-9);
    const done = planned(230, [...doneUntil("boil"), record("boil", 175), record("clean", 180, 225)]);
    expect(ids(done.steps)).not.toContain("clean-1");
  });

  it("may be pitching, which is over as soon as it has begun", () => {
    const plan = planned(302, [...doneUntil("pitch"), record("pitch", 301)]);
    expect(plan.pitch).toBeNull();
    expect(ids(plan.steps)).toEqual(["clean-1"]);
  });

  it("count by the last record of each", () => {
    const plan = planned(110, [...doneUntil("rest"), record("rest", 70, 100), record("rest", 80)]);
    expect(left(plan, "rest")).toMatchObject({ startMin: 80, minutes: 60 });
    expect(plan.heatingPace).toBe(1);
  });

  it("leave a day that is over with nothing to do", () => {
    const all = DAY.map(({ id, startMin, minutes }): StepRecord => ({
      step: id,
      startMin: startMin + 5,
      endMin: startMin + minutes + 5,
    }));
    const plan = planned(400, all);
    expect(plan.steps).toEqual([]);
    expect(plan.pitch).toBeNull();
    expect(plan.end).toEqual({ min: 345, low80: 345, high80: 345 });
    expectWithin(plan.behindMin, 5, 1e-9);
  });
});

describe("a record that cannot be", () => {
  it("of no step on the sheet is said", () => {
    expect(replan(10, [{ step: "sparge-1", startMin: 1, endMin: null }])).toEqual({
      ok: false,
      reason: "no-such-step",
      step: "sparge-1",
    });
  });

  it.each([
    [() => replan(Number.NaN, []), "now NaN min"],
    [() => replan(-1, []), "now -1 min is outside 0 to 1000000 min"],
    [() => replan(10, [record("fill", 11)]), "start of fill-1 11 min is outside 0 to 10 min"],
    [() => replan(10, [record("fill", -1)]), "start of fill-1 -1 min is outside 0 to 10 min"],
    [() => replan(10, [record("fill", 5, 4)]), "end of fill-1 4 min is outside 5 to 10 min"],
    [() => replan(10, [record("fill", 5, 11)]), "end of fill-1 11 min is outside 5 to 10 min"],
    [() => replan(10, [], { readings: [{ atMin: 11, celsius: 20 }] }), "time of a reading 11 min"],
    [() => replan(10, [], { readings: [{ atMin: 5, celsius: 200 }] }), "temperature read 200 °C"],
    [() => replan(10, [], { spread: { heating: 1.1, cooling: 0, hands: 0 } }), "spread of heating 1.1"],
    [() => replan(10, [], { spread: { heating: 0, cooling: -0.1, hands: 0 } }), "spread of cooling -0.1"],
    [() => replan(10, [], { spread: { heating: 0, cooling: 0, hands: NaN } }), "spread of hands NaN"],
  ])("is refused (%#)", (call, message) => {
    expect(call).toThrow(message);
  });

  it("on the sheet itself is refused", () => {
    const steps = DAY.map((step) => (step.id === "rest-1" ? { ...step, minutes: NaN } : step));
    expect(() => replan(10, [], { steps })).toThrow("length of rest-1 NaN");
    const early = DAY.map((step) => (step.id === "rest-1" ? { ...step, startMin: -1 } : step));
    expect(() => replan(10, [], { steps: early })).toThrow("start of rest-1 on the sheet -1");
  });
});

describe("any records of any day", () => {
  it("give a plan in order whose times lie ahead, finite and inside their intervals", () => {
    const anyRecord = fc.record({
      step: fc.constantFrom(...ids(DAY)),
      startMin: fc.option(fc.double({ min: 0, max: 100, noNaN: true })),
      endMin: fc.option(fc.double({ min: 100, max: 200, noNaN: true })),
    });
    fc.assert(
      fc.property(fc.array(anyRecord, { maxLength: 12 }), fc.integer({ min: 200, max: 500 }), (done, nowMin) => {
        const plan = planned(nowMin, done);
        plan.steps.forEach(({ startMin, start, end, state, name }, i) => {
          expect(startMin).toBeGreaterThanOrEqual(plan.steps[i - 1]?.startMin ?? 0);
          if (state === "to come") expect(startMin).toBeGreaterThanOrEqual(nowMin);
          for (const time of [start, end]) {
            expect(Number.isFinite(time.high80)).toBe(true);
            expect(time.low80).toBeLessThanOrEqual(time.min);
            expect(time.high80).toBeGreaterThanOrEqual(time.min);
          }
          expect(end.min, name).toBeGreaterThanOrEqual(start.min);
        });
        expect(plan.pitch === null || plan.pitch.min >= nowMin).toBe(true);
      }),
      { numRuns: 500, seed: 20261125 },
    );
  });
});
