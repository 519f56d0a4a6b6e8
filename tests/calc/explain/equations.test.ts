import { describe, expect, it } from "vitest";
import { platoToSpecificGravity, waterDensity, wortDensity } from "@/lib/calc/gravity";
import type { QuantityId } from "@/lib/calc/ledger";
import { wortHeatCapacity } from "@/lib/calc/heat";
import { celsius, degreesPlato } from "@/lib/calc/units";
import { EXPLAINED_BREWS, explanationOf, inputOf, PALE_ALE, type ExplainedBrew } from "../../support/explained-brews";

type Read = (label: string) => number;

const KEEPS = "Wort left in the grain, at 20 °C";
const water20 = waterDensity(celsius(20));
const wort20 = (plato: number): number => wortDensity({ plato: degreesPlato(plato), celsius: celsius(20) });

const wortAt = (plato: number, atC: number): number =>
  wortDensity({ plato: degreesPlato(plato), celsius: celsius(atC) });
const sg = (plato: number): number => platoToSpecificGravity(degreesPlato(plato));
const alcoholByMass = (original: number, final: number): number =>
  (original - 0.1808 * original - 0.8192 * final) / (2.0665 - 0.010665 * original);

/** The equation as the explanation words it, worked again from nothing but the inputs that it shows. */
const EQUATIONS: Readonly<Partial<Record<QuantityId, (of: Read) => number>>> = {
  "water.sparge": (of) => of("Water in all") - of("Mash water") - of("Water after the boil"),
  "water.residualAlkalinity": (of) =>
    (of("Bicarbonate") * 50.043) / 61.016 - 50.043 * (of("Calcium") / 20.039 / 3.5 + of("Magnesium") / 12.1525 / 7),
  "mash.thickness": (of) => of("Mash water") / of("Grist"),
  "mash.dissolved": (of) => of("Extract in the grist") * of("Conversion"),
  "mash.firstWort": (of) =>
    (100 * of("Extract dissolved")) /
    (of("Mash water") * water20 + of("Moisture of the grist") + of("Extract dissolved")),
  "mash.time": (of) => of("Rests, of all mashes") + of("Heating between rests"),
  "lauter.retained": (of) => of("Absorption of the grain") * of("Grist") + of("Number of mashes") * of("Dead space"),
  "lauter.runOff": (of) => of("Run-off, by mass") / of("Density of the run-off at 20 °C"),
  "lauter.efficiency": (of) => 1 - of("Extract left in the grain") / of("Extract dissolved"),
  "kettle.preBoilGravity": (of) =>
    (100 * (of("Extract dissolved") - of("Extract left in the grain"))) / of("Run-off, by mass"),
  "kettle.boilingPoint": (of) => {
    const mmHg = 760 * (1 - 2.25577e-5 * of("Altitude")) ** 5.25588;
    return 1730.63 / (8.07131 - Math.log10(mmHg)) - 233.426;
  },
  "kettle.power": (of) => of("Rated power") * (of("Supply voltage") / of("Rated voltage")) ** 2,
  "kettle.preBoil": (of) => {
    const plato = of("Gravity before the boil");
    return (of("Run-off, at 20 °C") * wort20(plato)) / wortAt(plato, of("Boils at"));
  },
  "kettle.postBoil": (of) => of("Hot wort, by mass") / wortAt(of("Gravity at the end of the boil"), of("Boils at")),
  "kettle.postBoilGravity": (of) =>
    (100 * (of("Extract dissolved") - of("Extract left in the grain") + of("Extract of sugar and malt extract"))) /
    of("Hot wort, by mass"),
  "stand.lost": (of) =>
    of("Trub") + of("Chiller and hoses") + (of("Absorption of hops") * of("Hops in the kettle")) / 1000,
  "fermenter.originalExtract": (of) => {
    const wortKg = of("Wort into the fermenter, by mass");
    return (of("Gravity at the end of the boil") * wortKg) / (wortKg + of("Water after the boil") * water20);
  },
  "fermenter.efficiency": (of) =>
    of("Extract into the fermenter") / (of("Extract in the grist") + of("Extract of sugar and malt extract")),
  "fermenter.cells": (of) => of("Pitch rate") * of("Into the fermenter, at 20 °C") * of("Original extract"),
  "fermenter.finalExtract": (of) => of("Original extract") * (1 - of("Apparent attenuation")),
  "package.volume": (of) =>
    of("Beer, by mass") / wort20(of("Final gravity")) -
    of("Left with the yeast") -
    (of("Absorption of hops") * of("Dry hops")) / 1000,
  "package.alcohol": (of) =>
    (alcoholByMass(of("Original extract"), of("Final gravity")) * sg(of("Final gravity"))) / 0.7907,
  "package.energyContent": (of) => {
    const [original, final] = [of("Original extract"), of("Final gravity")];
    const left = 0.1808 * original + 0.8192 * final - 0.1;
    return 10 * (6.9 * alcoholByMass(original, final) + 4 * left) * sg(final);
  },
  "package.primingSugar": (of) => {
    const fahrenheit = of("Warmest since fermentation ended") * 1.8 + 32;
    const left = 3.0378 - 0.050062 * fahrenheit + 0.00026555 * fahrenheit ** 2;
    return (of("Packaged") * (of("Carbonation") - left) * 1.9635) / of("Gas from a gram of sugar");
  },
  "package.pressure": (of) =>
    (of("Carbonation") * 1.9635) / (10 * Math.exp(-10.73797 + 2617.25 / (of("Warmest temperature") + 273.15))) - 1.013,
};

const CASES = Object.entries(EXPLAINED_BREWS).flatMap(([name, brew]) =>
  (Object.keys(EQUATIONS) as (keyof typeof EQUATIONS)[])
    .filter((id) => brew.ledger.quantities[id] !== null)
    .map((id) => ({ name, id, brew })),
);

function worked(id: QuantityId, brew: ExplainedBrew): number {
  const explanation = explanationOf(id, brew);
  return EQUATIONS[id]?.((label) => inputOf(explanation, label)) ?? Number.NaN;
}

describe("an equation", () => {
  it.each(CASES)("$name: $id follows from the inputs that are shown with it", ({ id, brew }) => {
    const value = brew.ledger.quantities[id] ?? Number.NaN;
    // Constants in the texts have four or five digits.
    expect(Math.abs(worked(id, brew) - value)).toBeLessThanOrEqual(2e-4 * Math.max(1, Math.abs(value)));
  });

  it.each(Object.entries(EXPLAINED_BREWS))("%s: the water is all that is wanted and lost, by mass", (_name, brew) => {
    const explanation = explanationOf("water.total", brew);
    const of: Read = (label) => inputOf(explanation, label);
    const strengthOf = (id: QuantityId): number => brew.ledger.quantities[id] ?? Number.NaN;
    const lost = explanationOf("lauter.lost", brew).value ?? Number.NaN;
    // The wort that the grain keeps is as strong as its extract makes it; two passes settle the density.
    let keptKg = of(KEEPS);
    for (let pass = 0; pass < 4; pass++) keptKg = of(KEEPS) === 0 ? 0 : of(KEEPS) * wort20((100 * lost) / keptKg);
    const kg =
      of("Into the fermenter, at 20 °C") * wort20(strengthOf("fermenter.originalExtract")) +
      of("Left with trub, hops and hoses, at 20 °C") * wort20(strengthOf("kettle.postBoilGravity")) +
      of("Boiled off, at 20 °C") * water20 +
      keptKg -
      of("Moisture of the grist") -
      of("Extract dissolved") -
      of("Sugar and malt extract");
    expect(explanation.value).toBeCloseTo(kg / water20, 4);
  });

  it.each(Object.entries(EXPLAINED_BREWS))("%s: boil-off, heater and boil give what is boiled off", (_name, brew) => {
    const explanation = explanationOf("kettle.evaporated", brew);
    const of: Read = (label) => inputOf(explanation, label);
    const before = brew.equipment.kettle.lid ? 0 : of("Evaporated while heating");
    expect(before).toBeGreaterThanOrEqual(0);
    const lossW = of("Heat loss of the kettle") * (of("Boils at") - of("Air"));
    const heatW = of("Heater power on this supply") * of("Share of the power that reaches the liquid");
    // 2256.5 kJ/kg at 100 °C (NIST/ASME steam tables), which is 0.4 % off at the most here.
    const holdable = Math.max(0, ((heatW - lossW) * 3600) / 2_256_500);
    expect(Math.abs(of("Boil-off that the heater can hold") - holdable)).toBeLessThanOrEqual(0.004 * holdable);
    const boilOff = Math.min(of("Boil-off of this kettle"), of("Boil-off that the heater can hold"));
    expect(explanation.value).toBeCloseTo(((boilOff * of("Boil")) / 60 + before) / water20, 6);
  });

  it.each(Object.entries(EXPLAINED_BREWS))("%s: colour follows from mass, °L and wort (Morey 1995)", (_name, brew) => {
    const explanation = explanationOf("fermenter.colour", brew);
    const rows = explanation.inputs.filter((input) => input.unit === "kg·°L");
    const sum = rows.reduce((total, input) => total + (input.value ?? 0), 0);
    const litres = inputOf(explanation, "Wort that they colour, at 20 °C, with water after the boil in proportion");
    expect(explanation.value).toBeCloseTo((25 / 12.7) * 1.4922 * ((8.3454 * sum) / litres) ** 0.6859, 3);
  });

  it("of the attenuation weighs malt and sugar by their extract (Balling 1865)", () => {
    const explanation = explanationOf("fermenter.attenuation");
    const of: Read = (label) => inputOf(explanation, label);
    const sugar = of("Sucrose, share of the extract");
    const malt = (of("Range of the yeast, low") + of("Range of the yeast, high")) / 2 + of("What the mash adds");
    expect(explanation.value).toBeCloseTo(
      (1 - sugar) * malt + (sugar * of("Sucrose, share that yeast takes")) / 0.8192,
      9,
    );
  });

  it("of the time to chill with a coil follows from the exponential shown", () => {
    const explanation = explanationOf("stand.chillTime");
    const of: Read = (label) => inputOf(explanation, label);
    const plato = of("Gravity at the end of the boil");
    const kg = of("End of boil, hot") * wortAt(plato, PALE_ALE.ledger.quantities["kettle.boilingPoint"] ?? 0);
    const heat = wortHeatCapacity({ plato: degreesPlato(plato), celsius: celsius((of("From") + of("To")) / 2) });
    const flow = (of("Flow of cooling water") / 60) * 4178.4;
    const pull = flow * (1 - Math.exp(-of("Conductance of the chiller") / flow));
    const loss = of("Heat loss of the kettle");
    const floor = (pull * of("Cooling water") + loss * of("Air")) / (pull + loss);
    const constant = (kg * heat + of("Heat capacity of the empty kettle")) / (pull + loss);
    const seconds = constant * Math.log((of("From") - floor) / (of("To") - floor));
    expect(explanation.value).toBeCloseTo(seconds / 60, 3);
  });

  it("of the extract left in the grain follows for pouring over and for one batch", () => {
    for (const method of [
      "pale ale, poured over a basket",
      "stepped mash in an unheated tun, batch sparge, open kettle",
    ]) {
      const brew = EXPLAINED_BREWS[method as keyof typeof EXPLAINED_BREWS];
      const explanation = explanationOf("lauter.lost", brew);
      const of: Read = (label) => inputOf(explanation, label);
      const strength = of("First wort");
      const keptKg = of(KEEPS) * wort20(strength);
      const rinsingKg = of("Sparge water") * water20 * (1 - of("Share that runs past"));
      const mixed = (strength * keptKg) / (keptKg + rinsingKg);
      const left =
        brew.equipment.lauter.method === "batch"
          ? (mixed / 100) * of(KEEPS) * wort20(mixed)
          : (strength / 100) * keptKg * Math.exp(-rinsingKg / (of(KEEPS) * water20));
      expect(explanation.value).toBeCloseTo(left, 6);
    }
  });

  it.each(Object.entries(EXPLAINED_BREWS))("%s: strike water follows from the heat balance shown", (_name, brew) => {
    const explanation = explanationOf("water.strike", brew);
    const of: Read = (label) => inputOf(explanation, label);
    const waterKg = of("Strike water of one mash") * water20;
    const gristKg = of("Grist") / of("Number of mashes");
    const tun =
      brew.equipment.mash.kind === "tun"
        ? (of("Heat capacity of the mash tun") / 4186.8) * (of("First rest") - of("Air"))
        : 0;
    const strike = of("First rest") + (gristKg * 0.41 * (of("First rest") - of("Grain")) + tun) / waterKg;
    expect(explanation.value).toBeCloseTo(strike, 6);
  });
});

describe("a sum", () => {
  const sumOf = (id: QuantityId, labels: (label: string) => boolean, brew: ExplainedBrew): number =>
    explanationOf(id, brew)
      .inputs.filter((input) => labels(input.label))
      .reduce((sum, input) => sum + (input.value ?? 0), 0);

  it.each(Object.entries(EXPLAINED_BREWS))("%s: the brew day is all of its parts", (_name, brew) => {
    const value = brew.ledger.quantities["day.time"];
    if (value === null) expect(brew.ledger.quantities["kettle.heatingTime"]).toBeNull();
    else expect(sumOf("day.time", () => true, brew)).toBeCloseTo(value, 6);
  });

  it.each(Object.entries(EXPLAINED_BREWS))("%s: the electricity is all of its parts", (_name, brew) => {
    const value = brew.ledger.quantities["day.energy"];
    const parts = ["Heating the strike water", "Mash, rests and heating between them", "Heating to the boil", "Boil"];
    const sum = sumOf("day.energy", (label) => [...parts, "Sparge water"].includes(label), brew);
    if (value !== null) expect(sum).toBeCloseTo(value, 6);
  });

  it.each(Object.entries(EXPLAINED_BREWS))("%s: bitterness is that of every addition together", (_name, brew) => {
    const kinds = explanationOf("fermenter.bitterness", brew).inputs.filter((each) => each.dimension === "bitterness");
    const sum = kinds.reduce((total, each) => total + (each.value ?? 0), 0);
    expect(sum).toBeCloseTo(brew.ledger.quantities["fermenter.bitterness"] ?? Number.NaN, 9);
  });

  it.each(Object.entries(EXPLAINED_BREWS))("%s: grist and its extract are those of the rows", (_name, brew) => {
    const rows = sumOf("mash.grist", () => true, brew);
    const extract = sumOf("mash.potential", (label) => label.startsWith("Extract in "), brew);
    expect(rows).toBeCloseTo(brew.ledger.quantities["mash.grist"] ?? Number.NaN, 9);
    expect(extract).toBeCloseTo(brew.ledger.quantities["mash.potential"] ?? Number.NaN, 9);
  });
});
