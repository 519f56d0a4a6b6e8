import { describe, expect, it } from "vitest";
import { equivalentBoilMinutes } from "@/lib/calc/bitterness";
import { chill, wortHeatCapacity, type Chill, type ChillOutcome } from "@/lib/calc/heat";
import { integrateOde } from "@/lib/calc/numerics";
import { celsius, degreesPlato, joulesPerKelvin, kilograms, litresPerMinute, wattsPerKelvin } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const COIL: Chill = {
  kind: "immersion",
  massKg: kilograms(24),
  plato: degreesPlato(12),
  vesselHeatCapacity: joulesPerKelvin(4000),
  conductance: wattsPerKelvin(400),
  coolantFlow: litresPerMinute(6),
  coolantC: celsius(14),
  lossCoefficient: wattsPerKelvin(0),
  ambientC: celsius(20),
  fromC: celsius(99),
  toC: celsius(20),
};

/** 6 L/min of cooling water in W/K, by hand: 0.1 L/s × 0.998 kg/L × 4186.8 J/(kg·K). */
const FLOW_W_PER_K = 417.84;
const WORT_J_PER_KG_K = wortHeatCapacity({ plato: degreesPlato(12), celsius: celsius(59.5) });
const CAPACITY_J_PER_K = 24 * WORT_J_PER_KG_K + 4000;

function cooled(a: Chill): ChillOutcome & { readonly ok: true } {
  const outcome = chill(a);
  if (!outcome.ok) throw new Error(`stopped at ${outcome.floorC} °C`);
  return outcome;
}

describe("chill with a coil", () => {
  it("takes (C/εṁc) ln(85/6), with ε = 1 − exp(−UA/ṁc) (Kays and London, by hand)", () => {
    const effectiveness = 1 - Math.exp(-400 / FLOW_W_PER_K);
    const byHand = (CAPACITY_J_PER_K / (effectiveness * FLOW_W_PER_K)) * Math.log(85 / 6);
    expectWithin(cooled(COIL).seconds / byHand, 1, 1e-5);
  });

  it("agrees with a second method that carries the loss to the air", () => {
    const a = { ...COIL, lossCoefficient: wattsPerKelvin(9) };
    const pull = FLOW_W_PER_K * (1 - Math.exp(-400 / FLOW_W_PER_K));
    const outcome = integrateOde({
      slopes: (_t, [t = 0], out) => {
        out[0] = -(pull * (t - 14) + 9 * (t - 20)) / CAPACITY_J_PER_K;
      },
      from: 0,
      to: 1e6,
      start: [99],
      relative: 1e-10,
      absolute: 1e-10,
      event: (_t, [t = 0]) => t - 20,
    });
    expectWithin(cooled(a).seconds / outcome.t, 1, 1e-5);
  });

  it("tends to one transfer by conductance alone with very much water", () => {
    const flooded = cooled({ ...COIL, massKg: kilograms(2), coolantFlow: litresPerMinute(9999) });
    expectWithin(flooded.seconds / (((2 * WORT_J_PER_KG_K + 4000) / 400) * Math.log(85 / 6)), 1, 1e-3);
  });

  it("uses the flow times the time of water", () => {
    const { coolantLitres, seconds } = cooled(COIL);
    expectWithin(coolantLitres, (6 * seconds) / 60, 1e-9);
  });

  it("gives a curve from start to end that lies on the exponential", () => {
    const { curve, seconds } = cooled(COIL);
    expect(curve[0]).toEqual([0, 99]);
    expectWithin(curve.at(-1)?.[0] ?? NaN, seconds / 60, 1e-9);
    expectWithin(curve.at(-1)?.[1] ?? NaN, 20, 1e-9);
    const constantMin = seconds / 60 / Math.log(85 / 6);
    for (const [minute, at] of curve) expectWithin(at, 14 + 85 * Math.exp(-minute / constantMin), 1e-9);
  });

  it("gives a curve fine enough for bitterness: within 1 % of four hundred straight lines", () => {
    const { curve, seconds } = cooled(COIL);
    const constantMin = seconds / 60 / Math.log(85 / 6);
    const fine = Array.from({ length: 401 }, (_, i) => {
      const minute = (seconds / 60) * (i / 400);
      return [minute, 14 + 85 * Math.exp(-minute / constantMin)] as const;
    });
    expectWithin(equivalentBoilMinutes({ curve }) / equivalentBoilMinutes({ curve: fine }), 1, 0.01);
  });

  it("cannot cool below its water", () => {
    expect(chill({ ...COIL, toC: celsius(12) })).toEqual({ ok: false, reason: "coolant-too-warm", floorC: 14 });
  });

  it("takes no time to a temperature that is there already", () => {
    expect(chill({ ...COIL, toC: COIL.fromC })).toMatchObject({
      ok: true,
      seconds: 0,
      coolantLitres: 0,
      curve: [[0, 99]],
    });
  });
});

describe("chill in ice or in air", () => {
  it("works against 0 °C in melting ice", () => {
    const byHand = (CAPACITY_J_PER_K / 400) * Math.log(99 / 20);
    expectWithin(cooled({ ...COIL, kind: "ice bath" }).seconds / byHand, 1, 1e-6);
  });

  it("melts as much ice as the wort gives heat: m c ΔT / 333.43 kJ/kg", () => {
    expectWithin(cooled({ ...COIL, kind: "ice bath" }).coolantLitres, (CAPACITY_J_PER_K * 79) / 333_430, 1e-6);
  });

  it("melts less ice when the air takes a share", () => {
    const shared = cooled({ ...COIL, kind: "ice bath", lossCoefficient: wattsPerKelvin(50) });
    expect(shared.coolantLitres).toBeLessThan(cooled({ ...COIL, kind: "ice bath" }).coolantLitres);
  });

  it("follows Newton's law in air alone", () => {
    const left = { ...COIL, kind: "none", lossCoefficient: wattsPerKelvin(10), toC: celsius(30) } as const;
    const capacity = 24 * wortHeatCapacity({ plato: degreesPlato(12), celsius: celsius(64.5) }) + 4000;
    expectWithin(cooled(left).seconds / ((capacity / 10) * Math.log(79 / 10)), 1, 1e-9);
    expect(cooled(left).coolantLitres).toBe(0);
  });

  it("cannot cool below the air, nor at all in a perfect flask", () => {
    const left = { ...COIL, kind: "none", lossCoefficient: wattsPerKelvin(10), toC: celsius(19) } as const;
    expect(chill(left)).toEqual({ ok: false, reason: "coolant-too-warm", floorC: 20 });
    expect(chill({ ...left, lossCoefficient: wattsPerKelvin(0) })).toEqual({
      ok: false,
      reason: "coolant-too-warm",
      floorC: 99,
    });
  });
});

describe("chill against a flow", () => {
  const COUNTERFLOW: Chill = { ...COIL, kind: "counterflow" };

  it("runs at the flow whose heat is conductance times log-mean difference", () => {
    const { seconds } = cooled(COUNTERFLOW);
    const wortWPerK = (24 * WORT_J_PER_KG_K) / seconds;
    const hotEndK = 99 - (14 + (wortWPerK * 79) / FLOW_W_PER_K);
    const logMeanK = (hotEndK - 6) / Math.log(hotEndK / 6);
    expectWithin((400 * logMeanK) / (wortWPerK * 79), 1, 1e-5);
  });

  it("is balanced where UA/W = (Th − To)/(To − Tc) for equal heat capacities of both flows (by hand)", () => {
    // Equal flows have the same difference all along: 417.84 × 79 = UA × 6.
    const balanced = { ...COUNTERFLOW, conductance: wattsPerKelvin((FLOW_W_PER_K * 79) / 6) };
    expectWithin((24 * WORT_J_PER_KG_K) / cooled(balanced).seconds / FLOW_W_PER_K, 1, 1e-4);
  });

  it("slows down steadily as the wort gets hotter to begin with", () => {
    const times = Array.from(
      { length: 400 },
      (_, i) => cooled({ ...COUNTERFLOW, fromC: celsius(70 + i * 0.07) }).seconds,
    );
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });

  it("beats the coil with the same conductance and water", () => {
    expect(cooled(COUNTERFLOW).seconds).toBeLessThan(cooled(COIL).seconds);
  });

  it("averages the isomerisation over wort that leaves sooner and later", () => {
    const { seconds, wortCurve } = cooled(COUNTERFLOW);
    // Wort waits at 99 °C for half the time on average.
    const rate = equivalentBoilMinutes({
      curve: [
        [0, 99],
        [1, 99],
      ],
    });
    const atTwenty = equivalentBoilMinutes({
      curve: [
        [0, 20],
        [1, 20],
      ],
    });
    expectWithin(equivalentBoilMinutes({ curve: wortCurve }), (seconds / 120) * (rate + atTwenty), 1e-9);
  });

  it("cannot cool below its water, nor without water", () => {
    expect(chill({ ...COUNTERFLOW, toC: celsius(14) })).toEqual({ ok: false, reason: "coolant-too-warm", floorC: 14 });
    expect(chill({ ...COUNTERFLOW, coolantFlow: litresPerMinute(0) })).toMatchObject({ ok: false, floorC: 99 });
  });
});

describe("chill", () => {
  it("refuses cooling water that is none", () => {
    expect(() => chill({ ...COIL, coolantC: celsius(61) })).toThrow("coolant temperature 61 °C is outside 0 to 60 °C");
    expect(() => chill({ ...COIL, fromC: celsius(103) })).toThrow("start temperature 103 °C is outside 0 to 102 °C");
  });
});
