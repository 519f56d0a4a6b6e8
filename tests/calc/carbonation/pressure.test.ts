import { describe, expect, it } from "vitest";
import { bottlePressure, co2Volumes, gaugePressure, type BottlePressure } from "@/lib/calc/carbonation";
import { bar, barFromPsi, celsius, celsiusFromFahrenheit, fahrenheit, psi, volumesCo2 } from "@/lib/calc/units";
import { FORCE_CARBONATION, HENRY, VOLUMES_OF_PRESSURE } from "../../reference/carbonation";
import { expectWithin } from "../../support/expect-within";

const volumesAt = (temperature: number, gauge: number): number =>
  co2Volumes({ celsius: celsius(temperature), gaugeBar: bar(gauge) });

const pressureFor = (temperature: number, volumes: number): number =>
  gaugePressure({ celsius: celsius(temperature), volumes: volumesCo2(volumes) });

const inUsUnits = (row: { readonly psi: number; readonly fahrenheit: number }): number =>
  co2Volumes({ celsius: celsiusFromFahrenheit(fahrenheit(row.fahrenheit)), gaugeBar: barFromPsi(psi(row.psi)) });

/** Ideal gas at 0 °C and 1 atm, g/L: 44.009 / 22.414. */
const GRAMS_PER_VOLUME = 1.9635;

describe("co2Volumes", () => {
  it.each(VOLUMES_OF_PRESSURE)("is $volumes at $psi psi and $fahrenheit °F (deLange 2011, from memory)", (row) => {
    expectWithin(inUsUnits(row), row.volumes, 0.01);
  });

  it.each(FORCE_CARBONATION)("is about $volumes at $psi psi and $fahrenheit °F (printed table)", (row) => {
    expectWithin(inUsUnits(row), row.volumes, 0.05);
  });

  it.each(HENRY)("is near $gramsPerLitre g/L at $gaugeBar bar and $celsius °C (Henry's law)", (row) => {
    // Real gas, 1.977 g/L (CRC Handbook); the two methods agree within 0.08 volumes.
    expectWithin(volumesAt(row.celsius, row.gaugeBar), row.gramsPerLitre / 1.977, 0.08);
  });

  it("rises with pressure and falls with temperature", () => {
    for (let gauge = 0; gauge <= 4; gauge += 0.5) {
      for (let t = 0; t <= 40; t += 5) {
        expect(volumesAt(t, gauge + 0.1)).toBeGreaterThan(volumesAt(t, gauge));
        expect(volumesAt(t + 1, gauge)).toBeLessThan(volumesAt(t, gauge));
      }
    }
  });

  it("is nothing in a vacuum", () => {
    expect(volumesAt(10, -1.0132)).toBe(0);
  });

  it("refuses less than a vacuum and a beer that boils", () => {
    expect(() => volumesAt(10, -1.02)).toThrow("gauge pressure -1.02 bar is outside -1.0133 to 20 bar");
    expect(() => volumesAt(80, 1)).toThrow("temperature 80 °C is outside -2 to 45 °C");
  });
});

describe("gaugePressure", () => {
  it("is undone by co2Volumes at every temperature and carbonation", () => {
    for (let t = -2; t <= 40; t += 2) {
      for (let volumes = 0; volumes <= 6; volumes += 0.25) {
        expectWithin(volumesAt(t, pressureFor(t, volumes)), volumes, 1e-12);
      }
    }
  });

  it("is negative where open beer would lose gas", () => {
    expect(pressureFor(20, 0.5)).toBeLessThan(0);
  });

  it("refuses what no vessel holds", () => {
    expect(() => pressureFor(20, -1)).toThrow("carbonation -1 volumes is outside 0 to 10 volumes");
    expect(() => pressureFor(50, 2)).toThrow("temperature 50 °C is outside -2 to 45 °C");
  });
});

describe("bottlePressure", () => {
  const pressure = (volumes: number, temperature: number, rated: number): BottlePressure =>
    bottlePressure({ volumes: volumesCo2(volumes), celsius: celsius(temperature), rated: volumesCo2(rated) });

  it("is 6.48 bar absolute with 7.9 g/L at 30 °C (Henry's law inverted, by hand)", () => {
    expectWithin(pressure(7.9 / GRAMS_PER_VOLUME, 30, 5).gaugeBar + 1.013, 6.48, 0.05);
  });

  it("is more than the fit to the table says in warm beer", () => {
    for (const t of [25, 30, 35, 40]) expect(pressure(2.5, t, 3).gaugeBar).toBeGreaterThan(pressureFor(t, 2.5));
  });

  it("refuses more gas than the bottle is made for, and still says how much it would be", () => {
    const refused = pressure(3.5, 25, 3);
    expect(refused).toMatchObject({ ok: false, reason: "above-rating", rated: 3 });
    expect(refused.gaugeBar).toBe(pressure(3.5, 25, 4).gaugeBar);
  });

  it("fills a bottle up to its rating", () => {
    expect(pressure(3, 25, 3).ok).toBe(true);
  });
});
