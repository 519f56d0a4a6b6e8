import { describe, expect, it } from "vitest";
import { CO2_FROM_SUGAR, primingSugar, residualCo2, type PrimingSugarKind } from "@/lib/calc/carbonation";
import { celsius, celsiusFromFahrenheit, fahrenheit, litres, volumesCo2 } from "@/lib/calc/units";
import { GAS_FROM_SUGAR } from "../../reference/carbonation";
import { expectPrinted } from "../../support/expect-printed";
import { expectWithin } from "../../support/expect-within";

const residualAtF = (temperature: number): number => residualCo2(celsiusFromFahrenheit(fahrenheit(temperature)));

describe("residualCo2", () => {
  it("is 1.199 volumes at 50 °F and 0.810 at 72 °F (common practice, no source)", () => {
    expectWithin(residualAtF(50), 1.199, 0.003);
    expectWithin(residualAtF(72), 0.81, 0.003);
  });

  it("is 1.708 volumes at 0 °C, 0.861 at 20 °C and 0.678 from 34.6 °C on (the parabola by hand)", () => {
    // 3.0378 − 0.050062 F + 0.00026555 F² at 32, 68 and 28.4 °F; lowest 3.0378 − 0.050062² / (4 × 0.00026555).
    expectPrinted(residualCo2(celsius(0)), "1.708");
    expectPrinted(residualCo2(celsius(20)), "0.861");
    expectPrinted(residualCo2(celsius(34.6)), "0.678");
    expectPrinted(residualCo2(celsius(45)), "0.678");
    expectPrinted(residualCo2(celsius(-2)), "1.830");
  });

  it("never rises with temperature", () => {
    const kept = Array.from({ length: 48 }, (_, i) => residualCo2(celsius(i - 2)));
    expect(kept).toEqual([...kept].sort((a, b) => b - a));
  });

  it("refuses a beer that was hotter than any fermentation", () => {
    expect(() => residualCo2(celsius(46))).toThrow("temperature 46 °C is outside -2 to 45 °C");
    expect(() => residualCo2(celsius(-3))).toThrow("temperature -3 °C is outside -2 to 45 °C");
  });
});

describe("primingSugar", () => {
  const grams = (volume: number, target: number, temperatureF: number, sugar: PrimingSugarKind): number =>
    primingSugar({
      litres: litres(volume),
      targetVolumes: volumesCo2(target),
      celsius: celsiusFromFahrenheit(fahrenheit(temperatureF)),
      sugar,
    });

  it.each(GAS_FROM_SUGAR)("gets $gramsPerGram g of gas from a gram of $sugar (stoichiometry)", (row) => {
    expectWithin(CO2_FROM_SUGAR[row.sugar], row.gramsPerGram, 0.0005);
  });

  it("is 156 g of sucrose for 23 L of 2.7 volumes from 64 °F (by hand)", () => {
    expectWithin(grams(23, 2.7, 64, "sucrose"), 156.2, 0.8);
  });

  it("is 90.9 g of anhydrous dextrose for 19 L of 2.0 volumes from 72 °F (by hand)", () => {
    expectWithin(grams(19, 2, 72, "dextroseAnhydrous"), 90.9, 0.8);
  });

  it("is 100.7 g of dextrose monohydrate for 20 L of 2.0 volumes at 20 °C (by hand)", () => {
    // 20 × (2 − 0.86149) × 1.96346 / 0.44416 = 44.7083 / 0.44416 = 100.66.
    expectWithin(grams(20, 2, 68, "dextroseMonohydrate"), 100.66, 0.03);
  });

  it("takes all six volumes that a bottle may be primed to", () => {
    expectWithin(grams(1, 6, 68, "sucrose"), ((6 - 0.86149) * 1.96346) / 0.51428, 0.005);
  });

  it("is in proportion to the volume", () => {
    expectWithin(grams(40, 2.4, 68, "sucrose"), 2 * grams(20, 2.4, 68, "sucrose"), 1e-9);
  });

  it("is nothing for beer that already holds as much", () => {
    expect(grams(20, 0.5, 50, "sucrose")).toBe(0);
  });

  it("refuses a gusher and a sugar it does not know", () => {
    expect(() => grams(20, 7, 68, "sucrose")).toThrow("carbonation 7 volumes is outside 0 to 6 volumes");
    expect(() =>
      primingSugar({ litres: -1 as never, targetVolumes: volumesCo2(2), celsius: celsius(20), sugar: "sucrose" }),
    ).toThrow("volume -1 L is outside 0 to 100000 L");
    expect(() => grams(20, 2.5, 68, "honey" as never)).toThrow(
      "gas from the sugar undefined g/g is outside 0.1 to 0.6",
    );
  });
});
