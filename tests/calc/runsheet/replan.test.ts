import { describe, expect, it } from "vitest";
import { buildRunSheet, USUAL_SPREAD } from "@/lib/calc/runsheet";
import { brewed, brewInput } from "../../support/brewed";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";
import { DAY, doneUntil, left, planned, record, replan } from "./hand-made-day";

const startsOf = (steps: readonly { readonly id: string; readonly startMin: number }[]): Record<string, number> =>
  Object.fromEntries(steps.map(({ id, startMin }) => [id, startMin]));

describe("a brew day that runs as planned", () => {
  it("is the sheet itself, whatever is over of it (identity)", () => {
    for (const name of ["weigh out", "fill", "rest", "heat to the boil", "chill", "pitch"] as const) {
      const from = DAY.findIndex((step) => step.name === name);
      const nowMin = DAY[from]?.startMin ?? 0;
      const plan = planned(nowMin, doneUntil(name));
      // Companions that were recorded as done are over; those that are not come with their own time.
      expect(startsOf(plan.steps), name).toEqual(startsOf(DAY.slice(from)));
      expect(plan.missed).toEqual([]);
      expect(plan.passed).toEqual([]);
      expectWithin(plan.behindMin, 0, 1e-9);
      expectWithin(plan.heatingPace, 1, 1e-12);
    }
  });

  it("is the sheet that buildRunSheet makes, too, and keeps what a step says", () => {
    const steps = buildRunSheet({ ...brewInput(), ledger: brewed() });
    const plan = planned(0, [], { steps });
    plan.steps.forEach(({ state, start, end, ...step }, i) => {
      const sheet = steps[i];
      if (sheet === undefined) throw new Error("more steps than on the sheet");
      expectWithin(step.startMin, sheet.startMin, 1e-9);
      expectWithin(step.minutes, sheet.minutes, 1e-9);
      expect({ ...step, startMin: 0, minutes: 0 }).toEqual({ ...sheet, startMin: 0, minutes: 0 });
      expect([state, start.min, end.min]).toEqual(["to come", step.startMin, step.startMin + step.minutes]);
    });
    expect(plan.steps).toHaveLength(steps.length);
  });
});

describe("a brew day that runs late", () => {
  it("moves everything that is left by half an hour when nothing has begun half an hour after its time", () => {
    const plan = planned(30, []);
    expect(startsOf(plan.steps)).toEqual(startsOf(DAY.map((step) => ({ ...step, startMin: step.startMin + 30 }))));
    expectWithin(plan.behindMin, 30, 1e-9);
    expectWithin(plan.pitch?.min ?? 0, 330, 1e-9);
    expectWithin(plan.end.min, 370, 1e-9);
  });

  it("gives pitching its 80 % interval from heating, chilling and handwork (by hand)", () => {
    // Handwork before pitching: 10, 10, 10, 15 and 15 min, a fifth of each: 2² + 2² + 2² + 3² + 3² = 30. Heating
    // together: (40 + 30) × 0.06 = 4.2, squared 17.64. Chilling together: (5 + 25) × 0.2 = 6, squared 36. The root of
    // 83.64 is 9.1455, times 1.28155 is 11.720.
    const { pitch, end } = planned(0, []);
    expectPrinted((pitch?.high80 ?? 0) - 300, "11.720");
    expectPrinted(300 - (pitch?.low80 ?? 0), "11.720");
    // Cleaning, 40 min by hand, adds 8² = 64: √147.64 × 1.28155 = 15.572.
    expectPrinted(end.high80 - 340, "15.572");
  });

  it("is surer of the time the more of the day is over", () => {
    const widths = (["weigh out", "rest", "boil", "chill", "transfer", "pitch"] as const).map((name) => {
      const done = doneUntil(name);
      const { pitch } = planned(DAY.find((step) => step.name === name)?.startMin ?? 0, done);
      return (pitch?.high80 ?? 0) - (pitch?.low80 ?? 0);
    });
    expect(widths).toEqual([...widths].sort((one, other) => other - one));
    expect(new Set(widths).size).toBe(widths.length);
    // A moment that is due now is certain.
    expect(widths.at(-1)).toBe(0);
  });

  it("promises nothing before now", () => {
    const plan = planned(100, [...doneUntil("heat strike water"), record("heat strike water", 20)]);
    for (const { start, end, state } of plan.steps) {
      if (state === "to come") expect(start.low80).toBeGreaterThanOrEqual(100);
      expect(end.low80).toBeGreaterThanOrEqual(100);
    }
  });

  it("counts a rest from when it really began, and the boil from the real boil", () => {
    const resting = planned(110, [...doneUntil("rest"), record("rest", 95)]);
    expect(left(resting, "rest")).toMatchObject({ startMin: 95, minutes: 60, state: "running" });
    expectWithin(left(resting, "lift and drain").startMin, 155, 1e-9);
    const boiling = planned(210, [...doneUntil("boil"), record("bitter", 205, 205), record("boil", 205)]);
    expect(left(boiling, "boil")).toMatchObject({ startMin: 205, minutes: 60, state: "running" });
    expectWithin(left(boiling, "late").startMin, 255, 1e-9);
    expectWithin(left(boiling, "stand").startMin, 270, 1e-9);
    expectWithin(left(boiling, "aroma").startMin, 270, 1e-9);
    expectWithin(boiling.pitch?.min ?? 0, 330, 1e-9);
  });

  it("knows a step that should be over by now, and goes on from now", () => {
    const plan = planned(150, [...doneUntil("rest"), record("rest", 70)]);
    expect(left(plan, "rest")).toMatchObject({ startMin: 70, minutes: 80, state: "overdue" });
    expectWithin(left(plan, "lift and drain").startMin, 150, 1e-9);
    // Exactly at its end it is still running.
    expect(left(planned(130, [...doneUntil("rest"), record("rest", 70)]), "rest").state).toBe("running");
  });

  it("heats as slowly for the rest of the day as it did so far (Bayes by hand)", () => {
    // Prior 1 ± 0.06, precision 277.78. 48 minutes instead of 40, each run ± 3: precision 1600/9 = 177.78, and
    // (277.78 + 40 × 48/9) / 455.56 = 1.07805. The boil is reached in 30 × 1.07805 = 32.341 min.
    const done = [...doneUntil("heat strike water"), record("heat strike water", 20, 68)];
    const plan = planned(68, done);
    expectPrinted(plan.heatingPace, "1.07805");
    expectPrinted(left(plan, "heat to the boil").minutes, "32.341");
    expectPrinted(left(plan, "boil").startMin - 68, "117.34");
    // Chilling has no part in it.
    expectWithin(left(plan, "chill").minutes, 25, 1e-9);
    // Where nothing may differ, nothing is learned.
    const sure = planned(68, done, { spread: { heating: 0, cooling: 0, hands: 0 } });
    expect(sure.heatingPace).toBe(1);
    expectWithin((sure.pitch?.high80 ?? 0) - (sure.pitch?.low80 ?? 1), 0, 1e-9);
  });

  it("chills as slowly as it cooled to the stand (Bayes by hand)", () => {
    // Prior 1 ± 0.2, precision 25; 15 minutes instead of 5: precision 25/9, (25 + 75/9) / (25 + 25/9) = 1.2.
    const done = [...doneUntil("cool to the stand"), record("cool to the stand", 235, 250)];
    expectPrinted(left(planned(250, done), "chill").minutes, "30.000");
    expectWithin(planned(250, done).heatingPace, 1, 1e-9);
  });
});

describe("a temperature read in a ramp", () => {
  const heating = [...doneUntil("heat to the boil"), record("heat to the boil", 150)];

  it("tells when it arrives: 14 K in 15 min, 20 K to go (by hand)", () => {
    const plan = planned(165, heating, { readings: [{ atMin: 165, celsius: 80 }] });
    const ramp = left(plan, "heat to the boil");
    // 165 + 20 × 15/14 = 186.43.
    expectPrinted(ramp.end.min, "186.43");
    expect(ramp.state).toBe("running");
    // 0.5 × 15/14 = 0.536; 21.43 × 0.5 × √2 / 14 = 1.082; 5 % of 21.43 = 1.071. The root of the squares is 1.614, times
    // 1.28155 is 2.07.
    expectPrinted(ramp.end.high80 - ramp.end.min, "2.07");
    expectPrinted(left(plan, "boil").startMin, "186.43");
    expectPrinted(left(plan, "hot-break watch").startMin, "181.43");
    // Strike water as planned, 1 in 277.78 + 177.78; this ramp 36.43 of 30 min, ± √(3² + 1.614²): precision 77.54.
    // (455.56 + 77.54 × 36.43/30) / 533.10 = 1.0312.
    expectPrinted(plan.heatingPace, "1.0312");
  });

  it("counts from the first reading to the last, whatever the order they come in", () => {
    const readings = [
      { atMin: 170, celsius: 84 },
      { atMin: 160, celsius: 70 },
      { atMin: 165, celsius: 90 },
    ];
    // 14 K in 10 min, 16 K to go: 170 + 11.43.
    expectPrinted(left(planned(170, heating, { readings }), "heat to the boil").end.min, "181.43");
    // What was read before the heating began is of another step.
    const earlier = [{ atMin: 149, celsius: 90 }, ...readings.slice(0, 1)];
    // 18 K in 20 min, 16 K to go: 170 + 17.78.
    expectPrinted(left(planned(170, heating, { readings: earlier }), "heat to the boil").end.min, "187.78");
  });

  it("at its end tells that it has arrived", () => {
    const plan = planned(185, heating, { readings: [{ atMin: 183, celsius: 100 }] });
    expect(left(plan, "heat to the boil")).toMatchObject({ state: "overdue", start: { min: 150 }, end: { min: 185 } });
  });

  it("says nothing before it has risen by 3 K", () => {
    const plain = left(planned(153, heating), "heat to the boil");
    const early = left(planned(153, heating, { readings: [{ atMin: 153, celsius: 68.9 }] }), "heat to the boil");
    expect(early).toEqual(plain);
    const enough = left(planned(153, heating, { readings: [{ atMin: 153, celsius: 69 }] }), "heat to the boil");
    // 3 K in 3 min, 31 K to go.
    expectPrinted(enough.end.min, "184.00");
  });

  it("that has hardly risen where it should have by 9 K tells that the heater does not heat", () => {
    // 34 K in 30 min on the sheet: 9 K after 7.94 min.
    const cold = [{ atMin: 158, celsius: 68.5 }];
    expect(replan(160, heating, { readings: cold })).toEqual({
      ok: false,
      reason: "not-heating",
      step: "heat-to-the-boil-1",
      celsius: 68.5,
    });
    expect(replan(160, heating, { readings: [{ atMin: 157.9, celsius: 68.5 }] }).ok).toBe(true);
  });

  it("starts strike water from what was filled, and is left aside outside a ramp", () => {
    const strike = [...doneUntil("heat strike water"), record("heat strike water", 20)];
    // From 12 °C: 30 K in 20 min, 30 K to go.
    const plan = planned(40, strike, { readings: [{ atMin: 40, celsius: 42 }] });
    expectPrinted(left(plan, "heat strike water").end.min, "60.00");
    const resting = [...doneUntil("rest"), record("rest", 70)];
    const readings = [{ atMin: 100, celsius: 60 }];
    expect(planned(100, resting, { readings })).toEqual(planned(100, resting));
  });
});

describe("USUAL_SPREAD", () => {
  it("is as people time their days: heating is surer than hands (common practice, no source)", () => {
    expect(USUAL_SPREAD.heating).toBeLessThan(USUAL_SPREAD.hands);
  });
});
