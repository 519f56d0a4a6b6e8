import { describe, expect, it } from "vitest";
import { platoToSpecificGravity, specificGravityToPlato } from "@/lib/calc/gravity";
import { degreesPlato, specificGravity } from "@/lib/calc/units";
import { GRAVITY_OF_PLATO, PLATO_OF_GRAVITY } from "../../reference/gravity";
import { expectWithin } from "../../support/expect-within";

const STRENGTHS = Array.from({ length: 441 }, (_, i) => i / 10 - 9);
const toSg = (plato: number): number => platoToSpecificGravity(degreesPlato(plato));
const toPlato = (sg: number): number => specificGravityToPlato(specificGravity(sg));

describe("platoToSpecificGravity", () => {
  it.each(GRAVITY_OF_PLATO)("is $sg at $plato °P ($source)", ({ plato, sg, within }) => {
    expectWithin(toSg(plato), sg, within);
  });

  it("agrees above 25 °P with apparent densities of sucrose solutions, where the usual fits drift", () => {
    // 30 and 35 %: CRC Handbook, concentrative properties of sucrose, D 20/4 1.1270 and 1.1513, from memory.
    expectWithin(toSg(30), (1.127 * 0.999972 - 0.0012) / (0.998204 - 0.0012), 0.0001);
    expectWithin(toSg(35), (1.1513 * 0.999972 - 0.0012) / (0.998204 - 0.0012), 0.0001);
  });

  it("rises with extract", () => {
    const gravities = STRENGTHS.map(toSg);
    expect(gravities).toEqual([...gravities].sort((a, b) => a - b));
  });

  it("is below 1 for beer lighter than water, where alcohol and water alone are as light", () => {
    // Wort of 12 °P of which nothing is left: −0.2207 × 12 = −2.648 °P apparent, 6.190 % alcohol by mass (Balling), whose
    // density by OIML R 22 is 987.48 kg/m³ in vacuum, so apparent 20/20 0.98925. Balling's line is 0.0006 off it.
    expectWithin(toSg(12 * (1 - 1 / 0.8192)), 0.98925, 0.001);
    // 20 °P: 10.792 % by mass, 982.73 kg/m³, 0.98249.
    expectWithin(toSg(20 * (1 - 1 / 0.8192)), 0.98249, 0.001);
  });

  it("refuses what is stronger than 35 °P and what is lighter than any beer", () => {
    expect(toSg(35)).toBeLessThan(1.1535);
    expect(() => toSg(35.01)).toThrow("extract 35.01 °P is outside -9 to 35 °P");
    expect(toSg(-9)).toBeGreaterThan(0.9661);
    expect(() => toSg(-9.01)).toThrow("extract -9.01 °P is outside -9 to 35 °P");
  });
});

describe("specificGravityToPlato", () => {
  it.each(PLATO_OF_GRAVITY)("is $plato °P at $sg ($source)", ({ sg, plato, within }) => {
    expectWithin(toPlato(sg), plato, within);
  });

  it("undoes platoToSpecificGravity over the whole range", () => {
    for (const plato of STRENGTHS) expectWithin(toPlato(toSg(plato)), plato, 1e-12);
  });

  it("is undone by platoToSpecificGravity over the whole range", () => {
    for (let sg = 0.967; sg <= 1.153; sg += 0.0005) expectWithin(toSg(toPlato(sg)), sg, 1e-14);
  });

  it("refuses what is lighter than any beer and what is stronger than 35 °P", () => {
    expect(() => toPlato(0.966)).toThrow("specific gravity 0.966 SG is outside 0.9661 to 1.1535 SG");
    expect(() => toPlato(1.154)).toThrow("specific gravity 1.154 SG is outside 0.9661 to 1.1535 SG");
  });
});
