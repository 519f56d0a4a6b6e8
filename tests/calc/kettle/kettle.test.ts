import { describe, expect, it } from "vitest";
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

describe("the ends of the kettle's volumes", () => {
  it("shrinkage is a gain when wort warms, and undoes itself", () => {
    const wort = degreesPlato(12);
    const down = coolingShrinkage({ plato: wort, from: celsius(100), to: celsius(20) });
    const up = coolingShrinkage({ plato: wort, from: celsius(20), to: celsius(100) });
    expect(up).toBeLessThan(0);
    expectWithin((1 - down) * (1 - up), 1, 1e-12);
  });

  it("shrinkage stops at the ends of the density: 35 °P and 100 °C", () => {
    const shrink = (plato: number, from: number) => () =>
      coolingShrinkage({ plato, from, to: 20 } as Parameters<typeof coolingShrinkage>[0]);
    expect(shrink(35, 100)()).toBeGreaterThan(0);
    expect(shrink(35.1, 100)).toThrow("35.1 °P is outside");
    expect(shrink(12, 100.1)).toThrow("100.1 °C is outside 0 to 100 °C");
    expect(shrink(12, NaN)).toThrow("NaN °C is outside 0 to 100 °C");
  });

  it("refuses less than no wort", () => {
    const kg = JSON.parse("-1") as ReturnType<typeof kilograms>;
    expect(() => wortVolume({ kg, plato: WATER, celsius: celsius(20) })).toThrow(
      "wort -1 kg is outside 0 to 100000 kg",
    );
  });
});
