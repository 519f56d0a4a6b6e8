import { describe, expect, it } from "vitest";
import {
  decoctionVolume,
  evaporationFlux,
  heatUp,
  latentHeat,
  mashHoldPower,
  stepHeat,
  WATER_HEAT_CAPACITY,
} from "@/lib/calc/heat";
import { mashVolume } from "@/lib/calc/mash";
import {
  celsius,
  fraction,
  joulesPerKelvin,
  joulesPerKilogramKelvin,
  kilograms,
  litres,
  metresPerSecond,
  squareMetres,
  watts,
  wattsPerKelvin,
} from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const MASH = {
  grainKg: kilograms(5),
  waterKg: kilograms(12),
  grainHeatCapacity: joulesPerKilogramKelvin(0.41 * WATER_HEAT_CAPACITY),
  vesselHeatCapacity: joulesPerKelvin(0),
};

describe("decoctionVolume", () => {
  const STEP = { ...MASH, fromC: celsius(52), toC: celsius(65), decoctionC: celsius(100) };
  const drawn = (changes: object): ReturnType<typeof decoctionVolume> & { readonly ok: true } => {
    const found = decoctionVolume({ ...STEP, ...changes });
    if (!found.ok) throw new Error(found.reason);
    return found;
  };

  it("draws 13/48 of the mash from 52 to 65 °C without a vessel (heat balance by hand)", () => {
    expectWithin(drawn({}).share, 13 / 48, 1e-12);
  });

  it("measures it in the mash's own litres: grain at 0.67 L/kg beside the water", () => {
    const mashL = mashVolume({ water: litres(12 / 0.998204), grist: kilograms(5) });
    expectWithin(drawn({}).litres, (13 / 48) * mashL, 1e-4);
  });

  it("balances: what the part gives, the rest and the vessel take", () => {
    const mashJPerK = 5 * 0.41 * WATER_HEAT_CAPACITY + 12 * WATER_HEAT_CAPACITY;
    const { share } = drawn({ vesselHeatCapacity: joulesPerKelvin(6000) });
    expectWithin(share * mashJPerK * 35, ((1 - share) * mashJPerK + 6000) * 13, 1e-6);
  });

  it("takes malt of 1717 J/(kg·K) unless told otherwise", () => {
    const { grainHeatCapacity, ...usual } = { ...STEP, vesselHeatCapacity: joulesPerKelvin(6000) };
    expect(decoctionVolume(usual)).toEqual(decoctionVolume({ ...usual, grainHeatCapacity }));
  });

  it("draws nothing for the rest that is there already, and all for the decoction's own temperature less the lead", () => {
    expect(drawn({ toC: celsius(52) })).toMatchObject({ share: 0, litres: 0 });
    expectWithin(drawn({ toC: celsius(99.9) }).share, 47.9 / 48, 1e-9);
  });

  it("says how hot the whole mash would make a heavy vessel, where it does not suffice", () => {
    const mashJPerK = 14.05 * WATER_HEAT_CAPACITY;
    const found = decoctionVolume({ ...STEP, toC: celsius(90), vesselHeatCapacity: joulesPerKelvin(mashJPerK) });
    expect(found).toMatchObject({ ok: false, reason: "more-than-the-mash" });
    // As much vessel as mash: half way from 52 to 100 °C.
    expectWithin(found.ok ? NaN : found.highestC, 76, 1e-9);
  });

  it.each([
    [{ fromC: -21 }, "mash temperature -21 °C is outside -20 to 102 °C"],
    [{ toC: 51 }, "target temperature 51 °C is outside 52 to 99.9 °C"],
    [{ toC: 100 }, "target temperature 100 °C is outside 52 to 99.9 °C"],
    [{ decoctionC: 52 }, "decoction temperature 52 °C is outside 52.1 to 102 °C"],
    [{ decoctionC: 103 }, "decoction temperature 103 °C is outside"],
    [{ grainKg: NaN }, "grain NaN kg is outside 0 to 100000 kg"],
    [{ waterKg: 0 }, "mash water 0 kg is outside 0.001 to 100000 kg"],
    [{ grainHeatCapacity: 99 }, "grain specific heat 99 J/(kg·K) is outside 100 to 5000 J/(kg·K)"],
    [{ vesselHeatCapacity: -1 }, "vessel heat capacity -1 J/K is outside 0 to 1000000000 J/K"],
  ])("refuses %j", (changes, message) => {
    expect(() => decoctionVolume({ ...STEP, ...(changes as object) })).toThrow(message);
  });
});

const HELD = {
  celsius: celsius(66),
  lossCoefficient: wattsPerKelvin(6),
  openAreaM2: squareMetres(0),
  ambientC: celsius(20),
  relativeHumidity: fraction(0.5),
};

describe("mashHoldPower", () => {
  it("is the loss of the walls under a lid: 6 W/K × 46 K = 276 W", () => {
    expect(mashHoldPower(HELD)).toBe(276);
  });

  it("adds what evaporates from an open mash in still air", () => {
    const open = mashHoldPower({ ...HELD, openAreaM2: squareMetres(0.1) });
    const flux = evaporationFlux({ ...HELD, airSpeed: metresPerSecond(0.1) });
    expectWithin(open - 276, (0.1 * flux * latentHeat(celsius(66))) / 3600, 1e-9);
  });

  it("is the power at which heating stalls", () => {
    const a = { ...HELD, openAreaM2: squareMetres(0.1) };
    const powerW = mashHoldPower(a);
    const kettle = { ...MASH, ...a, powerW, fromC: celsius(40), toC: celsius(70) };
    const stalled = stepHeat(kettle);
    expectWithin(stalled.ok ? NaN : stalled.ceilingC, 66, 1e-6);
  });

  it("is nothing in a room as warm as the mash, or warmer, or below the dew point", () => {
    expect(mashHoldPower({ ...HELD, celsius: celsius(20) })).toBe(0);
    expect(mashHoldPower({ ...HELD, celsius: celsius(10), openAreaM2: squareMetres(0.1) })).toBe(0);
    const dewy = { ...HELD, relativeHumidity: fraction(1), celsius: celsius(20), openAreaM2: squareMetres(1) };
    expect(mashHoldPower(dewy)).toBe(0);
  });

  it.each([
    [{ celsius: 103 }, "temperature 103 °C is outside 0 to 102 °C"],
    [{ lossCoefficient: -1 }, "heat loss -1 W/K is outside 0 to 1000000 W/K"],
    [{ openAreaM2: NaN }, "open area NaN m² is outside 0 to 100 m²"],
    [{ ambientC: 61 }, "air temperature 61 °C is outside -30 to 60 °C"],
    [{ relativeHumidity: 1.1 }, "relative humidity 1.1 is outside 0 to 1"],
    [{ lossCoefficient: 1_000_000 }, "power 46000000 W is outside 0 to 10000000 W"],
  ])("refuses %j", (changes, message) => {
    expect(() => mashHoldPower({ ...HELD, ...(changes as object) })).toThrow(message);
  });
});

describe("stepHeat", () => {
  const { celsius: _held, ...surroundings } = HELD;
  const STEP = { ...MASH, ...surroundings, powerW: watts(2500), fromC: celsius(52), toC: celsius(65) };

  it("tends to (m c + g c) ΔT / P without losses: 14.05 × 4186.8 × 13 / 2500 s", () => {
    const found = stepHeat({ ...STEP, lossCoefficient: wattsPerKelvin(0) });
    expectWithin(found.ok ? found.seconds : NaN, (14.05 * WATER_HEAT_CAPACITY * 13) / 2500, 1e-6);
  });

  it("agrees with the closed form under a lid: (C/U) ln((P − U·32)/(P − U·45))", () => {
    const found = stepHeat({ ...STEP, vesselHeatCapacity: joulesPerKelvin(4000) });
    const capacity = 14.05 * WATER_HEAT_CAPACITY + 4000;
    expectWithin(found.ok ? found.seconds : NaN, (capacity / 6) * Math.log((2500 - 192) / (2500 - 270)), 1e-6);
  });

  it("is heatUp with the grain counted to the vessel", () => {
    const { grainKg, grainHeatCapacity, waterKg, ...kettle } = { ...STEP, openAreaM2: squareMetres(0.1) };
    const vesselHeatCapacity = joulesPerKelvin(grainKg * grainHeatCapacity);
    const water = { ...kettle, vesselHeatCapacity, massKg: waterKg, plato: 0 } as Parameters<typeof heatUp>[0];
    expect(stepHeat({ ...STEP, openAreaM2: squareMetres(0.1) })).toEqual(heatUp(water));
  });

  it.each([
    [{ grainKg: -1 }, "grain -1 kg is outside 0 to 100000 kg"],
    [{ waterKg: NaN }, "mash water NaN kg is outside 0 to 100000 kg"],
    [{ grainHeatCapacity: 5001 }, "grain specific heat 5001 J/(kg·K) is outside 100 to 5000 J/(kg·K)"],
    [{ vesselHeatCapacity: -1 }, "vessel heat capacity -1 J/K is outside 0 to 1000000000 J/K"],
    [{ vesselHeatCapacity: 1e9 }, "heat capacity 1000008582.94 J/K is outside 0 to 1000000000 J/K"],
    [{ powerW: -1 }, "power -1 W is outside 0 to 10000000 W"],
  ])("refuses %j", (changes, message) => {
    expect(() => stepHeat({ ...STEP, ...(changes as object) })).toThrow(message);
  });
});
