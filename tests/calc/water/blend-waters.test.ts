import { describe, expect, it } from "vitest";
import { litres } from "@/lib/calc/units";
import { addIons, blendWaters } from "@/lib/calc/water";
import { expectWithin } from "../../support/expect-within";
import { waterOf } from "../../support/water-of";

const HARD = waterOf({ calcium: 80, magnesium: 12, bicarbonate: 180 });
const DEIONISED = waterOf({});

describe("blendWaters", () => {
  it("thins 80 mg/L calcium to 48 with 40 % deionised water (mass balance by hand)", () => {
    const blend = blendWaters([
      { litres: litres(6), ions: HARD },
      { litres: litres(4), ions: DEIONISED },
    ]);
    expectWithin(blend.calcium, 48, 1e-9);
    expectWithin(blend.bicarbonate, 108, 1e-9);
  });

  it("leaves a water unchanged that is mixed with itself", () => {
    const blend = blendWaters([
      { litres: litres(3), ions: HARD },
      { litres: litres(7), ions: HARD },
    ]);
    expectWithin(blend.magnesium, 12, 1e-12);
  });

  it("refuses a part with an ion or a volume below zero, even where the sum would do", () => {
    const minus = { ...HARD, ...(JSON.parse('{ "sodium": -1 }') as object) };
    const parts = [
      { litres: litres(1), ions: minus },
      { litres: litres(9), ions: waterOf({ sodium: 50 }) },
    ];
    expect(() => blendWaters(parts)).toThrow("sodium -1 mg/L is outside 0 to 10000 mg/L");
    expect(() => addIons({ source: minus, salts: waterOf({ sodium: 50 }) })).toThrow("sodium -1 mg/L is outside");
    expect(() => addIons({ source: waterOf({ sodium: 50 }), salts: minus })).toThrow("sodium -1 mg/L is outside");
    const back = { litres: JSON.parse("-1") as ReturnType<typeof litres>, ions: HARD };
    expect(() => blendWaters([back, { litres: litres(9), ions: HARD }])).toThrow("water -1 L is outside 0 to 100000 L");
  });

  it("refuses to blend nothing", () => {
    expect(() => blendWaters([])).toThrow("blended water 0 L is outside 0.001 to 100000 L");
  });
});

describe("addIons", () => {
  it("adds ion by ion", () => {
    const sum = addIons({ source: HARD, salts: waterOf({ calcium: 20, chloride: 35 }) });
    expect(sum).toEqual(waterOf({ calcium: 100, magnesium: 12, chloride: 35, bicarbonate: 180 }));
  });

  it("refuses a sum that no water holds", () => {
    const full = waterOf({ sodium: 9000 });
    expect(() => addIons({ source: full, salts: full })).toThrow("sodium 18000 mg/L is outside 0 to 10000 mg/L");
  });
});
