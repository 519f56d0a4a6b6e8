import { describe, expect, it } from "vitest";
import { chill } from "@/lib/calc/heat";
import { commissionChill, commissionCounterflow, type ChillRun, type CounterflowRun } from "@/lib/calc/learn";
import { celsius, degreesPlato, joulesPerKelvin, kilograms, litresPerMinute, wattsPerKelvin } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";
import { seededNoise } from "../../support/seeded-noise";

const VESSEL = { value: joulesPerKelvin(4000), sd: 0 };
const LOSS = { value: wattsPerKelvin(8), sd: 0 };
const KNOWN = { conductance: 420, flow: 8, coolantC: 14, ambientC: 18, kg: 24 };
const MINUTES = [0, 3, 6, 9, 12, 16, 20];

/** Readings on the curve that `chill` draws, where each minute is found from the exponential between its points. */
function chilled(
  kind: "immersion" | "ice bath",
  minutes: readonly number[],
  noise = (): number => 0,
  flow = KNOWN.flow,
): ChillRun {
  // Heat drawn per kelvin: flow × c × (1 − exp(−G / flow c)), 0.998 kg of 4186.8 J/(kg·K) to the litre.
  const flowWPerK = (flow / 60) * 0.998 * 4186.8;
  const pull = kind === "ice bath" ? KNOWN.conductance : flowWPerK * (1 - Math.exp(-KNOWN.conductance / flowWPerK));
  const heat = KNOWN.kg * 4186.8 + VESSEL.value;
  const coldC = kind === "ice bath" ? 0 : KNOWN.coolantC;
  const endC = (pull * coldC + LOSS.value * KNOWN.ambientC) / (pull + LOSS.value);
  const at = (minute: number): number => endC + (95 - endC) * Math.exp((-(pull + LOSS.value) * 60 * minute) / heat);
  return {
    water: { value: kilograms(KNOWN.kg), sd: 0 },
    ambientC: celsius(KNOWN.ambientC),
    coolantC: { value: celsius(KNOWN.coolantC), sd: 0 },
    coolantFlow: { value: litresPerMinute(flow), sd: 0 },
    readings: minutes.map((minute) => ({
      seconds: 60 * minute,
      celsius: celsius(at(minute) + 0.3 * noise()),
      sd: 0.3,
    })),
  };
}

const trial = (run: ChillRun, kind: "immersion" | "ice bath" = "immersion"): ReturnType<typeof commissionChill> =>
  commissionChill({ kind, runs: [run], vesselHeatCapacity: VESSEL, lossCoefficient: LOSS });

describe("commissionChill", () => {
  it.each(["immersion", "ice bath"] as const)("finds the conductance of an %s from its exponential", (kind) => {
    const found = trial(chilled(kind, MINUTES), kind);
    if (!found.ok) throw new Error(found.reason);
    expectWithin(found.conductance.value, KNOWN.conductance, 0.05);
    expect(found.scatter.chiSquared).toBeLessThan(1e-6);
  });

  it("and chill with that conductance takes the time of the last reading", () => {
    const run = chilled("immersion", MINUTES);
    const found = trial(run);
    const taken = chill({
      kind: "immersion",
      massKg: run.water.value,
      plato: degreesPlato(0),
      vesselHeatCapacity: VESSEL.value,
      conductance: found.ok ? found.conductance.value : wattsPerKelvin(0),
      coolantFlow: run.coolantFlow.value,
      coolantC: run.coolantC.value,
      lossCoefficient: LOSS.value,
      ambientC: run.ambientC,
      fromC: celsius(95),
      toC: run.readings.at(-1)?.celsius ?? celsius(0),
    });
    expectWithin(taken.ok ? taken.seconds : NaN, 1200, 0.5);
  });

  it("covers the conductance with its 80 % interval in 70 to 90 of 100 noisy chills", () => {
    let covered = 0;
    for (let seed = 1; seed <= 100; seed++) {
      const found = trial(chilled("immersion", MINUTES, seededNoise(8191 * seed)));
      if (!found.ok) throw new Error(found.reason);
      if (Math.abs(found.conductance.value - KNOWN.conductance) <= 1.2816 * found.conductance.standardError) covered++;
    }
    expect(covered).toBeGreaterThanOrEqual(70);
    expect(covered).toBeLessThanOrEqual(90);
  });

  it("passes on what is not known of the flow", () => {
    const run = chilled("immersion", MINUTES);
    const unsure = trial({ ...run, coolantFlow: { value: litresPerMinute(8), sd: 0.5 } });
    const sure = trial(run);
    if (!sure.ok || !unsure.ok) throw new Error("both are told");
    expect(unsure.conductance.standardError).toBeGreaterThan(2 * sure.conductance.standardError);
  });

  it("refuses a trickle that leaves as warm as the water, a chill that barely began, and one that does not fall", () => {
    const run = chilled("immersion", MINUTES);
    // 420 W/K on 2 L/min, 139 W/K: all but 5 % of what the coolant can take, and the flow is known to 5 %.
    const trickle = chilled("immersion", MINUTES, undefined, 2);
    expect(trial({ ...trickle, coolantFlow: { value: litresPerMinute(2), sd: 0.1 } })).toEqual({
      ok: false,
      reason: "coolant-limited",
    });
    const brief = chilled("immersion", [0, 0.2, 0.4]).readings.map((reading) => ({ ...reading, sd: 1 }));
    expect(trial({ ...run, readings: brief })).toEqual({ ok: false, reason: "too-short" });
    const flat = run.readings.map((reading) => ({ ...reading, celsius: celsius(60) }));
    expect(trial({ ...run, readings: flat })).toEqual({ ok: false, reason: "does-not-fall", run: 0 });
    expect(trial({ ...run, readings: run.readings.slice(0, 2) })).toEqual({
      ok: false,
      reason: "too-few-readings",
      run: 0,
    });
    expect(trial({ ...run, coolantC: { value: celsius(60), sd: 0 }, readings: run.readings.slice(4) })).toMatchObject({
      ok: false,
      reason: "too-warm",
    });
  });
});

describe("commissionCounterflow", () => {
  /** 20 kg in 600 s are 139.56 W/K of water, 6 L/min are 417.8 W/K of coolant. */
  const RUN: CounterflowRun = {
    water: { value: kilograms(20), sd: 0 },
    seconds: 600,
    hotC: { value: celsius(90), sd: 0 },
    outC: { value: celsius(24), sd: 0.3 },
    coolantC: { value: celsius(14), sd: 0 },
    coolantFlow: { value: litresPerMinute(6), sd: 0 },
  };

  it("divides 9211 W by the log-mean of 53.96 K and 10 K, worked by hand: 353 W/K", () => {
    const found = commissionCounterflow(RUN);
    if (!found.ok) throw new Error(found.reason);
    // Coolant out: 14 + 139.56 × 66 / 417.84 = 36.04 °C; log mean (53.96 − 10) / ln 5.396 = 26.08 K.
    expectWithin(found.coolantOutC, 36.04, 0.01);
    expectWithin(found.conductance.value, 9211 / 26.08, 0.3);
  });

  it("is what chill runs at: the water leaves in those ten minutes", () => {
    const found = commissionCounterflow(RUN);
    const taken = chill({
      kind: "counterflow",
      massKg: RUN.water.value,
      plato: degreesPlato(0),
      vesselHeatCapacity: joulesPerKelvin(0),
      conductance: found.ok ? found.conductance.value : wattsPerKelvin(0),
      coolantFlow: RUN.coolantFlow.value,
      coolantC: RUN.coolantC.value,
      lossCoefficient: wattsPerKelvin(0),
      ambientC: celsius(18),
      fromC: RUN.hotC.value,
      toC: RUN.outC.value,
    });
    expectWithin(taken.ok ? taken.seconds : NaN, 600, 1e-3);
  });

  it("passes on the uncertainty of what comes out, by the slope between two neighbours", () => {
    const at = (outC: number): number => {
      const found = commissionCounterflow({ ...RUN, outC: { value: celsius(outC), sd: 0 } });
      return found.ok ? found.conductance.value : NaN;
    };
    const found = commissionCounterflow(RUN);
    expectWithin(found.ok ? found.conductance.standardError : NaN, (at(23.9) - at(24.1)) * 1.5, 0.05);
  });

  it("refuses water that leaves colder than the coolant came, and more heat than the coolant can take", () => {
    expect(commissionCounterflow({ ...RUN, outC: { value: celsius(13), sd: 0.3 } })).toEqual({
      ok: false,
      reason: "too-cold",
    });
    expect(commissionCounterflow({ ...RUN, coolantFlow: { value: litresPerMinute(1), sd: 0 } })).toEqual({
      ok: false,
      reason: "too-much-heat",
    });
    expect(commissionCounterflow({ ...RUN, outC: { value: celsius(14.2), sd: 0.5 } })).toEqual({
      ok: false,
      reason: "not-told",
    });
  });
});
