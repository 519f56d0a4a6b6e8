import { describe, expect, it } from "vitest";
import { boilOffRate, powerToHoldBoil, elementPower } from "@/lib/calc/heat";
import { celsius, kilogramsPerHour, volts, watts, wattsPerKelvin } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

describe("elementPower", () => {
  it.each([
    { rated: 2500, at: 240, on: 230, draws: 2296 },
    { rated: 3000, at: 230, on: 240, draws: 3266.5 },
  ])("of $rated W at $at V is $draws W on $on V (P ∝ V², by hand)", ({ rated, at, on, draws }) => {
    expectWithin(elementPower({ ratedW: watts(rated), ratedV: volts(at), supplyV: volts(on) }), draws, 0.5);
  });

  it("is the rated power on the rated voltage, and nothing on a dead supply", () => {
    expect(elementPower({ ratedW: watts(2000), ratedV: volts(230), supplyV: volts(230) })).toBe(2000);
    expect(elementPower({ ratedW: watts(2000), ratedV: volts(230), supplyV: volts(0) })).toBe(0);
  });

  it("refuses an element rated for no voltage", () => {
    const dead = { ratedW: watts(2000), ratedV: volts(0), supplyV: volts(230) };
    expect(() => elementPower(dead)).toThrow("rated voltage 0 V is outside 1 to 1000 V");
  });
});

const still = { lossCoefficient: wattsPerKelvin(0), boilingC: celsius(100), ambientC: celsius(20) };

describe("boilOffRate", () => {
  it("is 3.191 kg/h from 2 kW net (3600 × 2 / 2256.5)", () => {
    expect(boilOffRate({ ...still, powerW: watts(2000) })).toMatchObject({ ok: true });
    const rate = boilOffRate({ ...still, powerW: watts(2000) });
    expectWithin(rate.ok ? rate.kilogramsPerHour : NaN, 3.191, 0.005);
  });

  it("undoes powerToHoldBoil", () => {
    const kettle = { lossCoefficient: wattsPerKelvin(9), boilingC: celsius(96), ambientC: celsius(18) };
    const powerW = powerToHoldBoil({ ...kettle, boilOff: kilogramsPerHour(4) });
    const rate = boilOffRate({ ...kettle, powerW });
    expectWithin(rate.ok ? rate.kilogramsPerHour : NaN, 4, 1e-9);
  });

  it("says how much power is missing where the losses take more", () => {
    const cold = { ...still, lossCoefficient: wattsPerKelvin(10), powerW: watts(700) };
    expect(boilOffRate(cold)).toEqual({ ok: false, reason: "losses-exceed-power", missingW: 100 });
  });

  it("refuses a boiling point above that of any open kettle", () => {
    expect(() => boilOffRate({ ...still, boilingC: celsius(105), powerW: watts(2000) })).toThrow(
      "boiling point 105 °C is outside 0 to 102 °C",
    );
  });
});

describe("powerToHoldBoil", () => {
  it("is 2.19 kW for 3.5 L of cold water an hour (3.5 × 0.9982 × 2256.5 / 3600)", () => {
    expectWithin(powerToHoldBoil({ ...still, boilOff: kilogramsPerHour(3.5 * 0.9982) }) / 1000, 2.19, 0.005);
  });

  it("is the loss alone for a kettle that only simmers", () => {
    const kettle = { ...still, lossCoefficient: wattsPerKelvin(10), boilOff: kilogramsPerHour(0) };
    expect(powerToHoldBoil(kettle)).toBe(800);
  });

  it("refuses air that no brewer stands in", () => {
    expect(() => powerToHoldBoil({ ...still, ambientC: celsius(61), boilOff: kilogramsPerHour(3) })).toThrow(
      "air temperature 61 °C is outside -30 to 60 °C",
    );
  });
});
