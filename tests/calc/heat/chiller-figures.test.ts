import { describe, expect, it } from "vitest";
import { chill, coilConductance, heatUp, heatUpCurve, iceNeeded, vesselLoss, wortHeatCapacity } from "@/lib/calc/heat";
import {
  celsius,
  degreesPlato,
  fraction,
  joulesPerKelvin,
  kilograms,
  litresPerMinute,
  squareMetres,
  watts,
  wattsPerKelvin,
} from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const WORT = {
  massKg: kilograms(20),
  plato: degreesPlato(12),
  vesselHeatCapacity: joulesPerKelvin(4000),
  fromC: celsius(30),
  toC: celsius(20),
};

describe("iceNeeded", () => {
  const ICE = { ...WORT, iceC: celsius(0), bathC: celsius(0) };
  const capacity = 20 * wortHeatCapacity({ plato: degreesPlato(12), celsius: celsius(25) }) + 4000;

  it("is m c ΔT / 333.43 kJ/kg of ice at 0 °C whose water stays there (Feistel and Wagner 2006)", () => {
    expectWithin(iceNeeded(ICE), (capacity * 10) / 333_430, 1e-9);
  });

  it("is what the ice bath of chill melts without loss to the air", () => {
    const bath = chill({
      ...ICE,
      kind: "ice bath",
      conductance: wattsPerKelvin(100),
      coolantFlow: litresPerMinute(0),
      coolantC: celsius(0),
      lossCoefficient: wattsPerKelvin(0),
      ambientC: celsius(20),
    });
    expectWithin(bath.ok ? bath.coolantLitres : NaN, iceNeeded(ICE), 1e-6);
  });

  it("is less by the cold of the ice and the warmth of the bath: 2100 × 18 and 4186.8 × 5 J/kg (by hand)", () => {
    const found = iceNeeded({ ...ICE, iceC: celsius(-18), bathC: celsius(5) });
    expectWithin(found, (capacity * 10) / (333_430 + 37_800 + 20_934), 1e-9);
  });

  it("is none for wort that is cold enough", () => {
    expect(iceNeeded({ ...ICE, fromC: celsius(15) })).toBe(0);
    expect(iceNeeded({ ...ICE, fromC: celsius(20) })).toBe(0);
  });

  it.each([
    [{ massKg: -1 }, "mass -1 kg is outside 0 to 100000 kg"],
    [{ plato: 36 }, "extract 36 °P is outside 0 to 35 °P"],
    [{ vesselHeatCapacity: NaN }, "vessel heat capacity NaN J/K is outside"],
    [{ fromC: 103 }, "start temperature 103 °C is outside 0 to 102 °C"],
    [{ toC: -1 }, "target temperature -1 °C is outside 0 to 102 °C"],
    [{ iceC: 1 }, "ice temperature 1 °C is outside -30 to 0 °C"],
    [{ iceC: -31 }, "ice temperature -31 °C is outside -30 to 0 °C"],
    [{ bathC: 20.5 }, "bath temperature 20.5 °C is outside 0 to 20 °C"],
    [{ massKg: 100_000, fromC: 102, toC: 0 }, "ice "],
  ])("refuses %j", (changes, message) => {
    expect(() => iceNeeded({ ...ICE, ...(changes as object) })).toThrow(message);
  });
});

describe("coilConductance", () => {
  it.each([
    { wort: "still", conductance: 200, low: 125, high: 275 },
    { wort: "stirred", conductance: 500, low: 350, high: 700 },
  ] as const)("of half a square metre in $wort wort is $conductance W/K (common practice, no source)", (row) => {
    const { wort, ...expected } = row;
    expect(coilConductance({ outsideM2: squareMetres(0.5), wort })).toEqual(expected);
  });

  it("refuses a coil turned inside out", () => {
    const outsideM2 = JSON.parse("-1") as ReturnType<typeof squareMetres>;
    expect(() => coilConductance({ outsideM2, wort: "still" })).toThrow(
      "surface of the coil -1 m² is outside 0 to 100 m²",
    );
  });
});

describe("vesselLoss", () => {
  const POT = { wallM2: squareMetres(0.8), insulationMm: 0, conductivity: 0.04 };

  it("is 8.8 W/K bare, within the 8 to 12 W/K of a steel pot of 30 to 50 L (common practice, no source)", () => {
    expectWithin(vesselLoss(POT), 8.8, 1e-9);
  });

  it("is 0.8 / (1/11 + 0.01/0.04) = 2.347 W/K behind a centimetre of foam (by hand)", () => {
    expectWithin(vesselLoss({ ...POT, insulationMm: 10 }), 2.3467, 1e-4);
  });

  it.each([
    [{ wallM2: -1 }, "surface of the vessel -1 m² is outside 0 to 100 m²"],
    [{ insulationMm: 501 }, "insulation 501 mm is outside 0 to 500 mm"],
    [{ insulationMm: NaN }, "insulation NaN mm is outside 0 to 500 mm"],
    [{ conductivity: 0 }, "conductivity 0 W/(m·K) is outside 0.01 to 400 W/(m·K)"],
  ])("refuses %j", (changes, message) => {
    expect(() => vesselLoss({ ...POT, ...(changes as object) })).toThrow(message);
  });
});

describe("heatUpCurve", () => {
  const KETTLE = {
    massKg: kilograms(28),
    plato: degreesPlato(11),
    vesselHeatCapacity: joulesPerKelvin(4000),
    powerW: watts(2500),
    lossCoefficient: wattsPerKelvin(8),
    openAreaM2: squareMetres(0.09),
    fromC: celsius(67),
    toC: celsius(99),
    ambientC: celsius(20),
    relativeHumidity: fraction(0.5),
  };
  const drawn = heatUpCurve(KETTLE);
  const curve = drawn.ok ? drawn.curve : [];

  it("runs in thirteen points from the start to the target, at the time that heatUp gives", () => {
    const whole = heatUp(KETTLE);
    expect(curve).toHaveLength(13);
    expect(curve[0]).toEqual([0, 67]);
    expect(curve.at(-1)?.[1]).toBe(99);
    expectWithin(curve.at(-1)?.[0] ?? NaN, whole.ok ? whole.seconds / 60 : NaN, 1e-5);
  });

  it("rises in equal steps of temperature that take longer and longer", () => {
    const steps = curve
      .slice(1)
      .map(([minute, at], i) => [minute - (curve[i]?.[0] ?? NaN), at - (curve[i]?.[1] ?? NaN)]);
    for (const [, riseK] of steps) expectWithin(riseK ?? NaN, 32 / 12, 1e-9);
    const lengths = steps.map(([minutes = NaN]) => minutes);
    expect(lengths).toEqual([...lengths].sort((a, b) => a - b));
  });

  it("is the start alone where nothing is to be heated, and the stall where it cannot be", () => {
    expect(heatUpCurve({ ...KETTLE, toC: celsius(60) })).toEqual({ ok: true, curve: [[0, 67]] });
    const weak = { ...KETTLE, powerW: watts(400) };
    expect(heatUpCurve(weak)).toEqual(heatUp(weak));
    expect(heatUpCurve(weak).ok).toBe(false);
  });
});

describe("heatUp at its ends", () => {
  it("names the target at most where it would boil dry or take for ever", () => {
    const lake = {
      massKg: kilograms(100_000),
      plato: degreesPlato(0),
      vesselHeatCapacity: joulesPerKelvin(0),
      powerW: watts(100),
      lossCoefficient: wattsPerKelvin(0.01),
      openAreaM2: squareMetres(0),
      fromC: celsius(20),
      toC: celsius(90),
      ambientC: celsius(20),
      relativeHumidity: fraction(0.5),
    };
    expect(heatUp(lake)).toEqual({ ok: false, reason: "losses-exceed-power", ceilingC: 90 });
  });
});
