import { describe, it } from "vitest";
import { coolingShrinkage, wortVolume } from "@/lib/calc/kettle";
import { celsius, degreesPlato, kilograms } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const WATER = degreesPlato(0);

describe("coolingShrinkage", () => {
  it("is 3.991 % for water from 100 to 20 °C (Kell 1975)", () => {
    expectWithin(100 * coolingShrinkage({ plato: WATER, from: celsius(100), to: celsius(20) }), 3.991, 0.02);
  });

  it("is 3.88 % for water from 100 to 25 °C (Kell 1975)", () => {
    expectWithin(100 * coolingShrinkage({ plato: WATER, from: celsius(100), to: celsius(25) }), 3.88, 0.02);
  });

  it("is nothing at the same temperature", () => {
    expectWithin(coolingShrinkage({ plato: degreesPlato(12), from: celsius(60), to: celsius(60) }), 0, 1e-15);
  });
});

describe("wortVolume", () => {
  it("makes 24.002 L at 20 °C of 25 L at 100 °C (conservation of mass, Kell 1975)", () => {
    const kg = kilograms(25 * 0.958345);
    expectWithin(wortVolume({ kg, plato: WATER, celsius: celsius(100) }), 25, 0.002);
    expectWithin(wortVolume({ kg, plato: WATER, celsius: celsius(20) }), 24.002, 0.01);
  });
});
