import { describe, expect, it } from "vitest";
import { firstWortPlato } from "@/lib/calc/mash";
import { kilograms } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

/** For one kilogram of grist: as-is extract times conversion, and the water it is mashed with. */
const ROWS = [
  { water: 2.5, maltWater: 0, dissolved: 0.8, plato: 24.24, source: "Narziß mass balance, R = 2.5, e = 0.80" },
  { water: 3, maltWater: 0, dissolved: 0.8, plato: 21.05, source: "Narziß mass balance, R = 3, e = 0.80" },
  { water: 4, maltWater: 0, dissolved: 0.8, plato: 16.67, source: "Narziß mass balance, R = 4, e = 0.80" },
  { water: 3.5, maltWater: 0, dissolved: 0.77 * 0.95, plato: 17.29, source: "Narziß mass balance, conversion 0.95" },
  {
    water: 2.7,
    maltWater: 0.045,
    dissolved: 0.81 * 0.955 * 0.95,
    plato: 21.12,
    source: "mass balance with 4.5 % malt moisture as solvent",
  },
];

describe("firstWortPlato", () => {
  it.each(ROWS)("gives $plato °P ($source)", ({ water, maltWater, dissolved, plato }) => {
    const found = firstWortPlato({
      water: kilograms(water),
      maltWater: kilograms(maltWater),
      dissolved: kilograms(dissolved),
    });
    expectWithin(found, plato, 0.03);
  });

  it("is 0 °P where nothing dissolved", () => {
    expect(firstWortPlato({ water: kilograms(3), maltWater: kilograms(0), dissolved: kilograms(0) })).toBe(0);
  });

  it("refuses a wort that no mash could be", () => {
    expect(() => firstWortPlato({ water: kilograms(0.1), maltWater: kilograms(0), dissolved: kilograms(0.9) })).toThrow(
      "first wort 90 °P is outside 0 to 60 °P",
    );
  });
});

describe("the ends of firstWortPlato", () => {
  const found = (water: number, maltWater: number, dissolved: number): number =>
    firstWortPlato({ water, maltWater, dissolved } as Parameters<typeof firstWortPlato>[0]);

  it("reach 60 °P and no further: 0.9 kg in 1.5 kg", () => {
    expectWithin(found(0.6, 0, 0.9), 60, 1e-9);
    expect(() => found(0.599, 0, 0.9)).toThrow("is outside 0 to 60 °P");
  });

  it("are nothing from nothing", () => {
    expect(found(0, 0, 0)).toBe(0);
  });

  it("refuse each mass that cannot be", () => {
    expect(() => found(-1, 0, 0)).toThrow("mash water -1 kg is outside 0 to 100000 kg");
    expect(() => found(1, NaN, 0)).toThrow("malt moisture NaN kg is outside 0 to 100000 kg");
    expect(() => found(1, 0, -0.1)).toThrow("dissolved extract -0.1 kg is outside 0 to 100000 kg");
  });
});
