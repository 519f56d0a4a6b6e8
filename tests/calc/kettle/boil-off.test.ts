import { describe, expect, it } from "vitest";
import { boilOffRate, latentHeat, powerToHoldBoil } from "@/lib/calc/heat";
import { boilOff } from "@/lib/calc/kettle";
import { celsius, kilograms, kilogramsPerHour, minutes, watts, wattsPerKelvin } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const POWERED = {
  wortKg: kilograms(25),
  minutes: minutes(60),
  powerW: watts(2000),
  lossCoefficient: wattsPerKelvin(0),
  boilingC: celsius(100),
  ambientC: celsius(20),
};
const LEARNED = { wortKg: kilograms(25), minutes: minutes(90), learnedRate: kilogramsPerHour(3) };

describe("boilOff by power", () => {
  it("is 3.191 kg in an hour from 2 kW net (3600 × 2 / 2256.5), and leaves the rest", () => {
    const found = boilOff(POWERED);
    if (!found.ok) throw new Error(found.reason);
    expectWithin(found.evaporatedKg, 3.191, 0.005);
    expectWithin(found.rate, 3.191, 0.005);
    expectWithin(found.leftKg + found.evaporatedKg, 25, 1e-12);
  });

  it("takes the loss of the walls off first: 10 W/K over 80 K leave 1.2 kW", () => {
    const found = boilOff({ ...POWERED, lossCoefficient: wattsPerKelvin(10), minutes: minutes(30) });
    expectWithin(found.ok ? found.evaporatedKg : NaN, (1200 * 1800) / latentHeat(celsius(100)), 1e-9);
  });

  it("is what the power to hold the boil was asked for", () => {
    const kettle = { lossCoefficient: wattsPerKelvin(8), boilingC: celsius(97), ambientC: celsius(15) };
    const powerW = powerToHoldBoil({ ...kettle, boilOff: kilogramsPerHour(2.5) });
    const found = boilOff({ ...POWERED, ...kettle, powerW, minutes: minutes(24) });
    expectWithin(found.ok ? found.evaporatedKg : NaN, 1, 1e-9);
  });

  it("says what power is missing where the walls lose more", () => {
    const weak = { ...POWERED, lossCoefficient: wattsPerKelvin(30) };
    expect(boilOff(weak)).toEqual({ ok: false, reason: "losses-exceed-power", missingW: 400 });
    expect(boilOffRate(weak)).toEqual({ ok: false, reason: "losses-exceed-power", missingW: 400 });
  });
});

describe("boilOff at a learned rate", () => {
  it("is the rate times the time: 3 kg/h for 90 min are 4.5 kg", () => {
    expect(boilOff(LEARNED)).toEqual({ ok: true, evaporatedKg: 4.5, leftKg: 20.5, rate: 3 });
  });

  it("ends when the kettle is dry, and not before", () => {
    expect(boilOff({ ...LEARNED, wortKg: kilograms(4.5) })).toMatchObject({ ok: true, leftKg: 0 });
    expect(boilOff({ ...LEARNED, wortKg: kilograms(4) })).toEqual({ ok: false, reason: "boils-dry", afterMinutes: 80 });
  });

  it("is nothing in no time", () => {
    expect(boilOff({ ...LEARNED, minutes: minutes(0) })).toMatchObject({ evaporatedKg: 0, leftKg: 25 });
  });
});

describe("boilOff refuses", () => {
  it.each([
    [{ ...LEARNED, wortKg: NaN }, "wort NaN kg is outside 0 to 100000 kg"],
    [{ ...LEARNED, minutes: -1 }, "time -1 min is outside 0 to 1000000 min"],
    [{ ...LEARNED, learnedRate: 10001 }, "boil-off 10001 kg/h is outside 0 to 10000 kg/h"],
    [{ ...POWERED, powerW: -1 }, "power -1 W is outside 0 to 10000000 W"],
    [{ ...POWERED, boilingC: 103 }, "boiling point 103 °C is outside 0 to 102 °C"],
  ])("%j", (a, message) => {
    expect(() => boilOff(a as typeof LEARNED)).toThrow(message);
  });
});
