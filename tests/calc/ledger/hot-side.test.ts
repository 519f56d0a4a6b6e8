import { describe, expect, it } from "vitest";
import { isomerisationRates } from "@/lib/calc/bitterness";
import { boilingPoint } from "@/lib/calc/heat";
import type { Equipment, HopAddition } from "@/lib/calc/ledger";
import { celsius, fraction, grams, metres, minutes, volts, wattsPerKelvin } from "@/lib/calc/units";
import { brewed, exactly, valueOf } from "../../support/brewed";
import { garageKettle } from "../../support/brewing-fixtures";
import { expectWithin } from "../../support/expect-within";

const stand = (
  c: number,
  min: number,
): { celsius: ReturnType<typeof celsius>; minutes: ReturnType<typeof minutes> } => ({
  celsius: celsius(c),
  minutes: minutes(min),
});

const hop = (use: HopAddition["use"], min: number): HopAddition => ({
  name: "Hop",
  grams: grams(50),
  alpha: fraction(0.1),
  use,
  minutes: minutes(min),
});

const slowCooling: Partial<Equipment> = {
  chiller: { ...garageKettle.chiller, kind: "none" },
};

describe("the hot side of the ledger", () => {
  it("heats in inverse proportion to the square of the voltage where nothing is lost (P = V²/R)", () => {
    const lossless = { lossCoefficient: exactly(wattsPerKelvin(0)) };
    const full = valueOf(brewed({ kettle: lossless }), "kettle.heatingTime");
    const low = valueOf(brewed({ kettle: { ...lossless, supplyVoltage: volts(207) } }), "kettle.heatingTime");
    expectWithin(low / full, (230 / 207) ** 2, 1e-6);
  });

  it("says where the heater stalls, and gives no time for the day", () => {
    const ledger = brewed({ kettle: { lossCoefficient: exactly(wattsPerKelvin(40)) } });
    expect(ledger.quantities["kettle.heatingTime"]).toBeNull();
    expect(ledger.quantities["day.time"]).toBeNull();
    const limit = ledger.limits.find((each) => each.id === "heater reaches the boil");
    // 2500 W × 0.97 over 40 W/K above 18 °C: worked by hand.
    expectWithin(limit?.value ?? 0, 18 + (2500 * 0.97) / 40, 0.01);
    expect(limit?.ok).toBe(false);
  });

  it("boils cooler at 1600 m and isomerises less by the ratio of the rates", () => {
    const recipe = { hops: [hop("boil", 60)], stand: null };
    const sea = brewed({ recipe, equipment: { altitude: metres(0) } });
    const high = brewed({ recipe, equipment: { altitude: metres(1600) } });
    const boilC = boilingPoint({ altitudeM: metres(1600) });
    const ratio = isomerisationRates(boilC).k1 / isomerisationRates(celsius(100)).k1;
    const afterBoil = (ledger: typeof sea, rate: number): number =>
      (ledger.hops[0]?.equivalentMinutes ?? 0) - 60 * rate;
    expectWithin(valueOf(high, "kettle.boilingPoint"), boilC, 1e-9);
    // What is left after the boil's own minutes is the cooling, and that starts lower too.
    expect(afterBoil(high, ratio)).toBeLessThan(afterBoil(sea, 1));
    // Tinseth's time term of 60 slower minutes over that of 60 minutes.
    const timeTerm = (min: number): number => 1 - Math.exp(-0.04 * min);
    const expected = timeTerm(60 * ratio) / timeTerm(60);
    expectWithin(valueOf(high, "fermenter.bitterness") / valueOf(sea, "fermenter.bitterness"), expected, 0.01);
  });

  it("boils below sea level too, where it is hotter than 100 °C", () => {
    expect(valueOf(brewed({ equipment: { altitude: metres(-400) } }), "kettle.boilingPoint")).toBeGreaterThan(100);
  });

  it("gets less from a stand at 80 °C after a fast chill than from the same hops in a slow cool from flame-out", () => {
    const fast = brewed({ recipe: { stand: stand(80, 20), hops: [hop("stand", 20)] } });
    const slow = brewed({ recipe: { stand: null, hops: [hop("boil", 0)] }, equipment: slowCooling });
    expect(slow.hops[0]?.ibu).toBeGreaterThan(2 * (fast.hops[0]?.ibu ?? 0));
    expect(fast.hops[0]?.ibu).toBeGreaterThan(0);
  });

  it("gets more from a longer stand", () => {
    const ibus = [5, 10, 20, 40].map(
      (min) => brewed({ recipe: { stand: stand(85, min), hops: [hop("stand", min)] } }).hops[0]?.ibu ?? 0,
    );
    expect(ibus).toEqual([...ibus].sort((a, b) => a - b));
  });

  it("gives a stand addition that goes in late only the rest of the stand", () => {
    const whole = brewed({ recipe: { stand: stand(85, 30), hops: [hop("stand", 30)] } }).hops[0];
    const half = brewed({ recipe: { stand: stand(85, 30), hops: [hop("stand", 15)] } }).hops[0];
    expect(half?.equivalentMinutes).toBeLessThan(0.6 * (whole?.equivalentMinutes ?? 0));
    expect(half?.equivalentMinutes).toBeGreaterThan(0.4 * (whole?.equivalentMinutes ?? 0));
  });

  it("keeps the phases of the day in a row without gaps", () => {
    const { phases } = brewed();
    phases.slice(1).forEach((phase, i) => {
      const before = phases[i];
      expectWithin(phase.startMin, (before?.startMin ?? 0) + (before?.minutes ?? 0), 1e-9);
    });
  });
});
