import { describe, expect, it } from "vitest";
import {
  chill,
  coilConductance,
  elementPower,
  heatUp,
  mashHoldPower,
  powerToHoldBoil,
  stepHeat,
  vesselLoss,
} from "@/lib/calc/heat";
import { boilOff, headspace, hotBreakAndTrubLoss } from "@/lib/calc/kettle";
import { runOff } from "@/lib/calc/lauter";
import { gristExtract } from "@/lib/calc/mash";
import { buildRunSheet } from "@/lib/calc/runsheet";
import {
  celsius,
  degreesPlato,
  fraction,
  joulesPerKelvin,
  kilograms,
  kilogramsPerHour,
  litres,
  litresPerMinute,
  minutes,
  squareMetres,
  volts,
  watts,
} from "@/lib/calc/units";
import { brewed, brewInput, valueOf } from "../support/brewed";
import { expectPrinted } from "../support/expect-printed";
import { expectWithin } from "../support/expect-within";

// Everything that a brewer of the trade would say at once. Each fact is common practice, no source.

/** A bare steel kettle of 40 L: 34 cm wide, 44 cm high. */
const BOTTOM_M2 = Math.PI * 0.17 ** 2;
const WALL_M2 = 2 * BOTTOM_M2 + Math.PI * 0.34 * 0.44;
const LOSS = vesselLoss({ wallM2: squareMetres(WALL_M2), insulationMm: 0, conductivity: 0.04 });
const ROOM = { ambientC: celsius(20), relativeHumidity: fraction(0.5) };

const KETTLE = {
  massKg: kilograms(30),
  plato: degreesPlato(11),
  vesselHeatCapacity: joulesPerKelvin(4000),
  powerW: watts(2500),
  lossCoefficient: LOSS,
  openAreaM2: squareMetres(BOTTOM_M2),
  fromC: celsius(66),
  toC: celsius(99),
  ...ROOM,
};

const secondsOf = (outcome: ReturnType<typeof heatUp>): number => (outcome.ok ? outcome.seconds : NaN);

describe("the heater (common practice, no source)", () => {
  it("rated 2.5 kW at 240 V gives about 2.3 kW at 230 V", () => {
    const drawn = elementPower({ ratedW: watts(2500), ratedV: volts(240), supplyV: volts(230) });
    expectPrinted(drawn / 1000, "2.3");
  });

  it("heats slower without a lid", () => {
    const lidded = secondsOf(heatUp({ ...KETTLE, openAreaM2: squareMetres(0) }));
    expect(secondsOf(heatUp(KETTLE))).toBeGreaterThan(lidded * 1.05);
  });

  it("needs less to hold a mash than to heat to it", () => {
    const hold = mashHoldPower({ ...ROOM, celsius: celsius(66), lossCoefficient: LOSS, openAreaM2: squareMetres(0) });
    // Brewers heat a mash by about a kelvin a minute: (18 × 4187 + 5 × 1717 + 4000) J/K in 60 s are 1.47 kW.
    expect(hold).toBeLessThan(1470 / 2);
    const mash = { ...KETTLE, grainKg: kilograms(5), waterKg: kilograms(18), openAreaM2: squareMetres(0) };
    const step = { ...mash, fromC: celsius(60), toC: celsius(66.5) };
    expect(stepHeat({ ...step, powerW: hold }).ok).toBe(false);
    expect(secondsOf(stepHeat({ ...step, powerW: watts(2500) }))).toBeLessThan(600);
  });

  it("needs less to hold a boil than to reach it, and about 2 kW hold a rolling boil of 20 L", () => {
    // A rolling boil of 20 L steams off 10 to 15 % of it in an hour.
    const boil = { lossCoefficient: LOSS, boilingC: celsius(100), ambientC: celsius(20) };
    const gentle = powerToHoldBoil({ ...boil, boilOff: kilogramsPerHour(2) });
    const strong = powerToHoldBoil({ ...boil, boilOff: kilogramsPerHour(3) });
    expect(gentle).toBeLessThan(2100);
    expect(strong).toBeGreaterThan(1900);
    const rate = boilOff({ ...boil, wortKg: kilograms(21), minutes: minutes(60), powerW: watts(2000) });
    const steamedShare = rate.ok ? rate.evaporatedKg / 21 : NaN;
    expect(steamedShare).toBeGreaterThan(0.06);
    expect(steamedShare).toBeLessThan(0.15);
    // With 2 kW the way from the mash to the boil would take longer than most boils.
    const reaching = secondsOf(heatUp({ ...KETTLE, massKg: kilograms(21), powerW: watts(2000), fromC: celsius(20) }));
    expect(reaching).toBeGreaterThan(3600);
    expect(secondsOf(heatUp({ ...KETTLE, powerW: gentle }))).toBeGreaterThan(secondsOf(heatUp(KETTLE)));
  });
});

describe("the basket made for 8 kg (common practice, no source)", () => {
  // 33 L of water in all, 14 L of them poured over the basket.
  const fill = (gristKg: number): number => {
    const potential = gristExtract({ kg: kilograms(gristKg), extract: fraction(0.8), moisture: fraction(0.04) });
    const dissolved = kilograms(potential * 0.95);
    const drained = runOff({
      wort: kilograms(19 + 0.04 * gristKg + dissolved),
      extract: dissolved,
      retained: litres(0.8 * gristKg),
      sparge: kilograms(14),
      method: "pour-over",
      bypass: fraction(0.25),
    });
    return drained.ok ? drained.efficiency : NaN;
  };

  it("can be filled, at a lower efficiency than half full", () => {
    expect(fill(8)).toBeGreaterThan(0.5);
    expect(fill(8)).toBeLessThan(fill(4) - 0.02);
  });
});

describe("the kettle (common practice, no source)", () => {
  it("of 40 L brews about 30 L with sensible headspace", () => {
    const room = headspace({ capacity: litres(40), wort: litres(30), plato: degreesPlato(11), celsius: celsius(100) });
    const boiled = boilOff({
      wortKg: kilograms(room.mostWort * 1.043),
      minutes: minutes(60),
      learnedRate: kilogramsPerHour(3),
    });
    expectWithin(boiled.ok ? boiled.leftKg / 1.048 : NaN, 30, 1.5);
  });

  it("without a false bottom loses less to trub after a whirlpool", () => {
    const plain = { wort: litres(22), bottomM2: squareMetres(BOTTOM_M2), falseBottom: false };
    const whirled = hotBreakAndTrubLoss({ ...plain, whirlpool: true }).litres;
    expect(whirled).toBeLessThan(hotBreakAndTrubLoss({ ...plain, whirlpool: false }).litres);
    expect(whirled).toBeLessThan(hotBreakAndTrubLoss({ ...plain, whirlpool: true, falseBottom: true }).litres);
  });
});

describe("the immersion coil (common practice, no source)", () => {
  // Nine metres of tube of 12.7 mm outside, water of 12 °C at 10 L/min.
  const outsideM2 = squareMetres(Math.PI * 0.0127 * 9);
  const cooling = (wort: "still" | "stirred"): ReturnType<typeof chill> =>
    chill({
      ...KETTLE,
      kind: "immersion",
      massKg: kilograms(21),
      conductance: coilConductance({ outsideM2, wort }).conductance,
      coolantFlow: litresPerMinute(10),
      coolantC: celsius(12),
      fromC: celsius(100),
      toC: celsius(80),
    });
  const minutesOf = (outcome: ReturnType<typeof chill>): number => (outcome.ok ? outcome.seconds / 60 : NaN);

  it("brings about 20 L from boiling to 80 °C within a minute or two when stirred", () => {
    expect(minutesOf(cooling("stirred"))).toBeGreaterThan(0.5);
    expect(minutesOf(cooling("stirred"))).toBeLessThan(2);
  });

  it("takes much longer in wort that stands", () => {
    expect(minutesOf(cooling("still"))).toBeGreaterThan(1.5 * minutesOf(cooling("stirred")));
  });
});

describe("the boil of 30 minutes (common practice, no source)", () => {
  const changes = { recipe: { boil: minutes(30) } };
  const steps = buildRunSheet({ ...brewInput(changes), ledger: brewed(changes) });
  const boil = steps.find((step) => step.name === "boil");
  const heating = steps.find((step) => step.name === "heat to the boil");

  it("is counted from the boil and not from switching on", () => {
    expect(boil?.minutes).toBe(30);
    expect(heating?.minutes).toBeGreaterThan(10);
    expectWithin((heating?.startMin ?? NaN) + (heating?.minutes ?? NaN), boil?.startMin ?? NaN, 1e-6);
    expectWithin(boil?.celsius ?? NaN, valueOf(brewed(changes), "kettle.boilingPoint"), 1e-9);
  });
});
