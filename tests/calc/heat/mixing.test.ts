import { describe, expect, it } from "vitest";
import {
  WATER_HEAT_CAPACITY,
  infusionVolume,
  maltHeatCapacity,
  restTemperature,
  slakingRise,
  strikeTemperature,
  wortHeatCapacity,
} from "@/lib/calc/heat";
import {
  celsius,
  degreesPlato,
  joulesPerKelvin,
  joulesPerKilogramKelvin,
  kilograms,
  minutes,
  percent,
  wattsPerKelvin,
} from "@/lib/calc/units";
import { MALT_TABLE } from "../../reference/steam";
import { expectWithin } from "../../support/expect-within";

const NO_VESSEL = { vesselHeatCapacity: joulesPerKelvin(0), vesselC: celsius(20) };
const celsiusFromFahrenheit = (f: number): ReturnType<typeof celsius> => celsius((f - 32) / 1.8);
const KG_PER_LB = 0.45359237;
const LITRES_PER_QUART = 0.946352946;

const strike = (mashC: number, grainC: number, grainKg: number, waterKg: number): number =>
  strikeTemperature({
    ...NO_VESSEL,
    mashC: celsius(mashC),
    grainC: celsius(grainC),
    grainKg: kilograms(grainKg),
    waterKg: kilograms(waterKg),
  });

describe("maltHeatCapacity and slakingRise", () => {
  it.each(MALT_TABLE)("at $moisture % moisture are $heatRatio of water's and $riseC °C (Brewing Room Book)", (row) => {
    expectWithin(maltHeatCapacity(percent(row.moisture)) / WATER_HEAT_CAPACITY, row.heatRatio, 0.005);
    expectWithin(slakingRise(percent(row.moisture)), row.riseC, 0.05);
  });

  it("make 1.716 kJ/(kg·K) of malt at 6 % (0.41 × 4.186)", () => {
    expectWithin(maltHeatCapacity(percent(6)) / 1000, 1.716, 0.01);
  });

  it("refuse malt that the table does not know", () => {
    expect(() => maltHeatCapacity(percent(8.1))).toThrow("moisture 8.1 % is outside 0 to 8 %");
    expect(() => slakingRise(percent(9))).toThrow("moisture 9 % is outside 0 to 8 %");
  });
});

describe("wortHeatCapacity", () => {
  it.each([
    { plato: 12, at: 20, kJ: 3.904 },
    { plato: 20, at: 20, kJ: 3.715 },
    { plato: 12, at: 65, kJ: 3.944 },
  ])("is $kJ kJ/(kg·K) for $plato °P at $at °C (sugar-factory formula, constants from memory)", ({ plato, at, kJ }) => {
    expectWithin(wortHeatCapacity({ plato: degreesPlato(plato), celsius: celsius(at) }) / 1000, kJ, 0.02);
  });

  it("refuses syrup and steam", () => {
    expect(() => wortHeatCapacity({ plato: degreesPlato(36), celsius: celsius(20) })).toThrow(
      "extract 36 °P is outside 0 to 35 °P",
    );
    expect(() => wortHeatCapacity({ plato: degreesPlato(12), celsius: celsius(103) })).toThrow(
      "temperature 103 °C is outside 0 to 102 °C",
    );
  });
});

describe("strikeTemperature", () => {
  it.each([
    { mash: 67, grain: 20, ratio: 2.5, strikes: 74.71, working: "67 + 0.41/2.5 × 47" },
    { mash: 66, grain: 18, ratio: 3, strikes: 72.56, working: "66 + 0.41/3 × 48" },
  ])("is $strikes °C for $mash °C at $ratio L/kg ($working)", ({ mash, grain, ratio, strikes }) => {
    expectWithin(strike(mash, grain, 4, 4 * ratio), strikes, 0.02);
  });

  it("is 110.8 °F for 104 °F at 1 qt/lb (Palmer 2006, his constant 0.2 for 0.1965)", () => {
    const grainHeatCapacity = joulesPerKilogramKelvin(((0.2 * LITRES_PER_QUART) / KG_PER_LB) * WATER_HEAT_CAPACITY);
    const water = strikeTemperature({
      ...NO_VESSEL,
      mashC: celsiusFromFahrenheit(104),
      grainC: celsiusFromFahrenheit(70),
      grainKg: kilograms(8 * KG_PER_LB),
      waterKg: kilograms(8 * LITRES_PER_QUART),
      grainHeatCapacity,
    });
    expectWithin(1.8 * water + 32, 110.8, 0.05);
  });

  it("balances: the water gives exactly what grain and vessel take", () => {
    const a = {
      mashC: celsius(66),
      grainC: celsius(12),
      grainKg: kilograms(5),
      waterKg: kilograms(14),
      grainHeatCapacity: joulesPerKilogramKelvin(1700),
      vesselHeatCapacity: joulesPerKelvin(6000),
      vesselC: celsius(18),
    };
    const given = a.waterKg * WATER_HEAT_CAPACITY * (strikeTemperature(a) - a.mashC);
    expectWithin(given, 5 * 1700 * 54 + 6000 * 48, 1e-6);
  });

  it("is the mash temperature itself without grain", () => {
    expect(strike(67, 20, 0, 10)).toBe(67);
  });

  it("tells a mash too thick for any water by an answer past the boiling point", () => {
    expect(strike(67, 20, 10, 5)).toBeGreaterThan(100);
  });

  it("refuses a mash without water", () => {
    expect(() => strike(67, 20, 5, 0)).toThrow("mash water 0 kg is outside 0.001 to 100000 kg");
  });
});

const infusion = (fromC: number, toC: number, infusionC: number, grainKg: number, waterKg: number): number =>
  infusionVolume({
    fromC: celsius(fromC),
    toC: celsius(toC),
    infusionC: celsius(infusionC),
    grainKg: kilograms(grainKg),
    waterKg: kilograms(waterKg),
    vesselHeatCapacity: joulesPerKelvin(0),
  });

describe("infusionVolume", () => {
  it.each([
    { from: 52, to: 65, at: 98, grain: 5, mash: 12, water: 5.535, working: "13 × (0.41 × 5 + 12) / 33" },
    { from: 40, to: 52, at: 100, grain: 4.5, mash: 9, water: 2.711, working: "12 × (0.41 × 4.5 + 9) / 48" },
  ])("is $water kg by hand: $working", ({ from, to, at, grain, mash, water }) => {
    expectWithin(infusion(from, to, at, grain, mash), water, 0.01);
  });

  it("is 5.0 qt from 140 to 158 °F with 8 lb in 12.9 qt and water of 210 °F (Palmer 2006)", () => {
    const kg = infusionVolume({
      fromC: celsiusFromFahrenheit(140),
      toC: celsiusFromFahrenheit(158),
      infusionC: celsiusFromFahrenheit(210),
      grainKg: kilograms(8 * KG_PER_LB),
      waterKg: kilograms(12.9 * LITRES_PER_QUART),
      vesselHeatCapacity: joulesPerKelvin(0),
      grainHeatCapacity: joulesPerKilogramKelvin(((0.2 * LITRES_PER_QUART) / KG_PER_LB) * WATER_HEAT_CAPACITY),
    });
    expectWithin(kg / LITRES_PER_QUART, 5, 0.06);
  });

  it("is nothing for the temperature that is there already", () => {
    expect(infusion(65, 65, 98, 5, 12)).toBe(0);
  });

  it("cools a mash with cold water by the same balance", () => {
    expectWithin(infusion(70, 66, 15, 5, 12), (4 * (0.41 * 5 + 12)) / 51, 1e-9);
  });

  it("refuses a target past what the infusion can reach", () => {
    expect(() => infusion(52, 98, 98, 5, 12)).toThrow("target temperature 98 °C is outside 52 to 97.9 °C");
    expect(() => infusion(66, 60, 98, 5, 12)).toThrow("target temperature 60 °C is outside 66 to 97.9 °C");
  });
});

describe("restTemperature", () => {
  const tenHours = { heatCapacity: joulesPerKelvin(36000), lossCoefficient: wattsPerKelvin(1) };

  it("falls from 67 to 62.527 °C in an hour with a time constant of 600 min (20 + 47 e^−0.1)", () => {
    const a = { ...tenHours, fromC: celsius(67), ambientC: celsius(20), minutes: minutes(60) };
    expectWithin(restTemperature(a), 62.527, 0.01);
  });

  it("splits into two rests of half the time", () => {
    const half = { ...tenHours, ambientC: celsius(20), minutes: minutes(30) };
    const first = restTemperature({ ...half, fromC: celsius(67) });
    const whole = restTemperature({ ...half, fromC: celsius(67), minutes: minutes(60) });
    expectWithin(restTemperature({ ...half, fromC: first }), whole, 1e-12);
  });

  it("refuses a vessel without heat capacity", () => {
    const nothing = { ...tenHours, heatCapacity: joulesPerKelvin(0), fromC: celsius(67), ambientC: celsius(20) };
    expect(() => restTemperature({ ...nothing, minutes: minutes(1) })).toThrow(
      "heat capacity 0 J/K is outside 1 to 1000000000 J/K",
    );
  });
});
