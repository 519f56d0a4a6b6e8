import { describe, expect, it } from "vitest";
import { bottlePressure, closedPressure, co2Volumes, gaugePressure, type BottlePressure } from "@/lib/calc/carbonation";
import { bar, barFromPsi, celsius, celsiusFromFahrenheit, fahrenheit, psi, volumesCo2 } from "@/lib/calc/units";
import { FORCE_CARBONATION, HENRY, VOLUMES_OF_PRESSURE } from "../../reference/carbonation";
import { expectPrinted } from "../../support/expect-printed";
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
    expect(() => volumesAt(10, 20.1)).toThrow("gauge pressure 20.1 bar is outside -1.0133 to 20 bar");
    expect(() => volumesAt(-2, 5)).toThrow("is outside 0 to 10 volumes");
    expect(volumesAt(45, 20)).toBeLessThan(10);
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

describe("closedPressure", () => {
  const closed = (temperature: number, volumes: number): number =>
    closedPressure({ celsius: celsius(temperature), volumes: volumesCo2(volumes) });

  it.each(HENRY)("is $gaugeBar bar with $gramsPerLitre g/L at $celsius °C (Henry's law inverted)", (row) => {
    // Half a unit of the last digit of g/L is 0.0003 bar.
    expectWithin(closed(row.celsius, row.gramsPerLitre / (44.009 / 22.414)), row.gaugeBar, 0.0004);
  });

  it("is 6.48 bar absolute with 7.9 g/L at 30 °C (Henry's law inverted, by hand)", () => {
    expectWithin(closed(30, 7.9 / GRAMS_PER_VOLUME) + 1.013, 6.48, 0.01);
  });

  it("is 3.013 bar with 2.5 volumes at 30 °C (by hand)", () => {
    // 2.5 × 1.96346 / (10 exp(−10.73797 + 2617.25 / 303.15)) − 1.013 = 4.90866 / 1.2191 − 1.013.
    expectPrinted(closed(30, 2.5), "3.013");
  });

  it("is more than the fit to the table says in warm beer", () => {
    for (const t of [25, 30, 35, 40]) expect(closed(t, 2.5)).toBeGreaterThan(pressureFor(t, 2.5));
  });

  it("rises with warmth and carbonation, to the ends of both", () => {
    for (let t = -2; t < 45; t++) expect(closed(t + 1, 2.5)).toBeGreaterThan(closed(t, 2.5));
    for (let volumes = 0; volumes < 10; volumes++) expect(closed(45, volumes + 1)).toBeGreaterThan(closed(45, volumes));
    expect(closed(45, 0)).toBeCloseTo(-1.013, 12);
  });

  it("refuses beer that boils and more than ten volumes", () => {
    expect(() => closed(45.1, 2.5)).toThrow("temperature 45.1 °C is outside -2 to 45 °C");
    expect(() => closedPressure({ celsius: celsius(20), volumes: 10.1 as never })).toThrow(
      "carbonation 10.1 volumes is outside 0 to 10 volumes",
    );
  });
});

describe("bottlePressure", () => {
  const pressure = (volumes: number, temperature: number, rated: number): BottlePressure =>
    bottlePressure({ volumes: volumesCo2(volumes), celsius: celsius(temperature), rated: volumesCo2(rated) });
  const inKeg = (volumes: number, temperature: number, ratedBar: number): BottlePressure =>
    bottlePressure({ volumes: volumesCo2(volumes), celsius: celsius(temperature), ratedBar: bar(ratedBar) });

  it("is the pressure of the closed bottle", () => {
    expect(pressure(2.5, 30, 3)).toEqual({
      ok: true,
      gaugeBar: closedPressure({ volumes: volumesCo2(2.5), celsius: celsius(30) }),
    });
  });

  it("refuses more gas than the bottle is made for, and still says how much it would be", () => {
    expect(pressure(3.01, 25, 3)).toEqual({
      ok: false,
      reason: "above-rating",
      gaugeBar: pressure(3.01, 25, 4).gaugeBar,
      rated: 3,
      ratedBar: null,
    });
  });

  it("fills a bottle up to its rating", () => {
    expect(pressure(3, 25, 3).ok).toBe(true);
  });

  it("holds a rating in bar against the warm bottle: 3.013 bar at 30 °C (by hand)", () => {
    expect(inKeg(2.5, 30, 3.02).ok).toBe(true);
    expect(inKeg(2.5, 30, 3.01)).toEqual({
      ok: false,
      reason: "above-rating",
      gaugeBar: pressure(2.5, 30, 3).gaugeBar,
      rated: null,
      ratedBar: 3.01,
    });
    expect(inKeg(2.5, 10, 3.01).ok).toBe(true);
  });

  it("fills a keg up to the bar", () => {
    const { gaugeBar } = inKeg(2.5, 30, 10);
    expect(inKeg(2.5, 30, gaugeBar).ok).toBe(true);
  });

  it("keeps to both ratings where two are stated", () => {
    const both = (rated: number, ratedBar: number): BottlePressure =>
      bottlePressure({
        volumes: volumesCo2(2.5),
        celsius: celsius(30),
        rated: volumesCo2(rated),
        ratedBar: bar(ratedBar),
      });
    expect(both(3, 4).ok).toBe(true);
    expect(both(2, 4)).toMatchObject({ ok: false, rated: 2, ratedBar: 4 });
    expect(both(3, 2)).toMatchObject({ ok: false, rated: 3, ratedBar: 2 });
  });

  it("refuses to judge a bottle of which nothing is stated, or nothing possible", () => {
    const beer = { volumes: volumesCo2(2.5), celsius: celsius(20) };
    expect(() => bottlePressure(beer as never)).toThrow("rating of the bottle NaN volumes is outside 0 to 10 volumes");
    expect(() => bottlePressure({ ...beer, rated: 11 as never })).toThrow("rating of the bottle 11 volumes");
    expect(() => bottlePressure({ ...beer, ratedBar: 20.5 as never })).toThrow(
      "rated pressure 20.5 bar is outside 0 to 20 bar",
    );
    expect(() => bottlePressure({ ...beer, ratedBar: -0.1 as never })).toThrow("rated pressure -0.1 bar");
  });
});
