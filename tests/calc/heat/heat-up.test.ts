import { describe, expect, it } from "vitest";
import { evaporationFlux, heatUp, latentHeat, wortHeatCapacity, type HeatUp } from "@/lib/calc/heat";
import { integrateOde } from "@/lib/calc/numerics";
import {
  celsius,
  degreesPlato,
  fraction,
  joulesPerKelvin,
  kilograms,
  metresPerSecond,
  squareMetres,
  watts,
  wattsPerKelvin,
} from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const WATER_UNDER_LID: HeatUp = {
  massKg: kilograms(30 * 0.9982),
  plato: degreesPlato(0),
  vesselHeatCapacity: joulesPerKelvin(0),
  powerW: watts(2500),
  lossCoefficient: wattsPerKelvin(10),
  openAreaM2: squareMetres(0),
  fromC: celsius(20),
  toC: celsius(95),
  ambientC: celsius(20),
  relativeHumidity: fraction(0.5),
};

const OPEN_WORT: HeatUp = {
  ...WATER_UNDER_LID,
  massKg: kilograms(33),
  plato: degreesPlato(13),
  vesselHeatCapacity: joulesPerKelvin(4200),
  openAreaM2: squareMetres(0.1),
  fromC: celsius(62),
  toC: celsius(99),
};

function timeOf(a: HeatUp): number {
  const outcome = heatUp(a);
  return outcome.ok ? outcome.seconds : NaN;
}

/** The energy balance over time by adaptive Runge–Kutta, up to the moment when the target is reached. */
function bySecondMethod(a: HeatUp): { readonly seconds: number; readonly evaporatedKg: number } {
  const outcome = integrateOde({
    slopes: (_t, [temperature = 0, massKg = 0], out) => {
      // A trial step may overshoot the target, and the formulas end at 102 °C.
      const at = celsius(Math.min(temperature, 102));
      const kgPerS =
        (a.openAreaM2 *
          evaporationFlux({
            celsius: at,
            ambientC: a.ambientC,
            relativeHumidity: a.relativeHumidity,
            airSpeed: metresPerSecond(0.1),
          })) /
        3600;
      const capacity = massKg * wortHeatCapacity({ plato: a.plato, celsius: at }) + a.vesselHeatCapacity;
      out[0] = (a.powerW - a.lossCoefficient * (at - a.ambientC) - kgPerS * latentHeat(at)) / capacity;
      out[1] = -kgPerS;
    },
    from: 0,
    to: 1e7,
    start: [a.fromC, a.massKg],
    relative: 1e-11,
    absolute: 1e-11,
    event: (_t, [temperature = 0]) => temperature - a.toC,
  });
  expect(outcome).toMatchObject({ ok: true, ended: "at-event" });
  return { seconds: outcome.t, evaporatedKg: a.massKg - (outcome.y[1] ?? NaN) };
}

const CASES: readonly { readonly what: string; readonly a: HeatUp }[] = [
  { what: "wort in an open kettle", a: OPEN_WORT },
  { what: "water under a lid", a: WATER_UNDER_LID },
  { what: "strong wort under a lid", a: { ...OPEN_WORT, openAreaM2: squareMetres(0), plato: degreesPlato(30) } },
  {
    what: "cold water in damp air, through its dew point",
    a: { ...OPEN_WORT, fromC: celsius(5), relativeHumidity: fraction(0.9) },
  },
  {
    what: "a wide shallow pan",
    a: { ...OPEN_WORT, powerW: watts(6000), openAreaM2: squareMetres(0.3), massKg: kilograms(12) },
  },
  { what: "a kettle with 2 % of its power to spare", a: { ...OPEN_WORT, powerW: watts(1715), toC: celsius(98) } },
];

describe("heatUp", () => {
  it("takes 74.48 min for 30 L from 20 to 95 °C with 2.5 kW and 10 W/K ((C/U) ln(2500/1750) by hand)", () => {
    expectWithin(timeOf(WATER_UNDER_LID) / 60, 74.48, 0.2);
  });

  it("takes 30.8 min for 30 L from 67 to 100 °C with 2.2 kW net (m c ΔT / P by hand, mass at 67 °C)", () => {
    // 300 W lost all the way: a constant loss is less power and no loss coefficient.
    const a = {
      ...WATER_UNDER_LID,
      massKg: kilograms(30 * 0.98),
      lossCoefficient: wattsPerKelvin(0),
      powerW: watts(2200),
    };
    expectWithin(timeOf({ ...a, fromC: celsius(67), toC: celsius(100) }) / 60, 30.8, 0.5);
  });

  it.each(CASES)("agrees with a second method to 1e-6: $what", ({ a }) => {
    const outcome = heatUp(a);
    const second = bySecondMethod(a);
    expectWithin(timeOf(a) / second.seconds, 1, 1e-6);
    expectWithin(outcome.ok ? outcome.evaporatedKg : NaN, second.evaporatedKg, 1e-6 * second.seconds * 1e-3);
  });

  it("agrees with the closed form under a lid, in water of constant specific heat", () => {
    const a = { ...WATER_UNDER_LID, vesselHeatCapacity: joulesPerKelvin(5000) };
    const capacity = a.massKg * 4186.8 + 5000;
    expectWithin(timeOf(a) / ((capacity / 10) * Math.log(2500 / 1750)), 1, 1e-9);
  });

  it("tends to m c ΔT / P without losses", () => {
    const a = { ...WATER_UNDER_LID, lossCoefficient: wattsPerKelvin(0) };
    expectWithin(timeOf(a), (a.massKg * 4186.8 * 75) / 2500, 1e-6);
  });

  it("adds up over two stretches, the second with what the first left", () => {
    const first = heatUp({ ...OPEN_WORT, toC: celsius(80) });
    const left = kilograms(OPEN_WORT.massKg - (first.ok ? first.evaporatedKg : NaN));
    const second = heatUp({ ...OPEN_WORT, massKg: left, fromC: celsius(80) });
    expectWithin((first.ok && second.ok ? first.seconds + second.seconds : NaN) / timeOf(OPEN_WORT), 1, 1e-6);
  });

  it("counts the energy as power times time", () => {
    const outcome = heatUp(OPEN_WORT);
    expectWithin(outcome.ok ? outcome.energyKWh : NaN, (2500 * timeOf(OPEN_WORT)) / 3.6e6, 1e-12);
  });

  it("heats slower without a lid, and evaporates nothing under one", () => {
    const lidded = heatUp({ ...OPEN_WORT, openAreaM2: squareMetres(0) });
    expect(lidded).toMatchObject({ ok: true, evaporatedKg: 0 });
    expect(timeOf(OPEN_WORT)).toBeGreaterThan(lidded.ok ? lidded.seconds : NaN);
  });

  it("takes no time to a temperature that is there already", () => {
    const there = heatUp({ ...OPEN_WORT, toC: OPEN_WORT.fromC });
    expect(there).toEqual({ ok: true, seconds: 0, energyKWh: 0, evaporatedKg: 0 });
  });

  it("stalls under a lid at Ta + P/U", () => {
    const weak = heatUp({ ...WATER_UNDER_LID, powerW: watts(600) });
    expect(weak).toEqual({ ok: false, reason: "losses-exceed-power", ceilingC: 80 });
  });

  it("stalls in the open where losses and evaporation take all the power", () => {
    const weak = heatUp({ ...OPEN_WORT, powerW: watts(1500) });
    const ceilingC = weak.ok ? celsius(0) : weak.ceilingC;
    const flux = evaporationFlux({
      celsius: ceilingC,
      ambientC: OPEN_WORT.ambientC,
      relativeHumidity: OPEN_WORT.relativeHumidity,
      airSpeed: metresPerSecond(0.1),
    });
    expectWithin(10 * (ceilingC - 20) + (0.1 * flux * latentHeat(ceilingC)) / 3600, 1500, 1e-4);
  });

  it("heats to just below the ceiling, and no further", () => {
    const weak = { ...OPEN_WORT, powerW: watts(1500) };
    const outcome = heatUp(weak);
    const ceilingC = outcome.ok ? NaN : outcome.ceilingC;
    expect(heatUp({ ...weak, toC: celsius(ceilingC - 1e-3) }).ok).toBe(true);
    expect(heatUp({ ...weak, toC: celsius(ceilingC + 1e-6) }).ok).toBe(false);
  });

  it("has no way up without power, and names where the kettle would drift to", () => {
    expect(heatUp({ ...WATER_UNDER_LID, powerW: watts(0), fromC: celsius(50) })).toMatchObject({
      ok: false,
      ceilingC: 20,
    });
    expect(heatUp({ ...WATER_UNDER_LID, powerW: watts(0), lossCoefficient: wattsPerKelvin(0) })).toMatchObject({
      ok: false,
      ceilingC: 20,
    });
    // Open water settles below the air, at its wet bulb.
    const open = heatUp({ ...OPEN_WORT, powerW: watts(0) });
    expect(open.ok ? 99 : open.ceilingC).toBeLessThan(20);
  });

  it("refuses temperatures beyond open kettles and humidity beyond saturation", () => {
    expect(() => heatUp({ ...OPEN_WORT, toC: celsius(103) })).toThrow(
      "target temperature 103 °C is outside 0 to 102 °C",
    );
    expect(() => heatUp({ ...OPEN_WORT, plato: degreesPlato(36) })).toThrow("extract 36 °P is outside 0 to 35 °P");
    const foggy = JSON.parse("1.1") as ReturnType<typeof fraction>;
    expect(() => heatUp({ ...OPEN_WORT, relativeHumidity: foggy })).toThrow("relative humidity 1.1 is outside 0 to 1");
  });
});
