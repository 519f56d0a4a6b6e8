import { describe, expect, it } from "vitest";
import * as units from "@/lib/calc/units";
import { CONVERSIONS, type ConvertedPair } from "../../reference/conversions";
import { expectWithin } from "../../support/expect-within";

interface Pair {
  readonly toUs: (metric: number) => number;
  readonly toMetric: (us: number) => number;
  /** Metric values over which a round trip is taken. */
  readonly span: readonly [number, number];
}

const PAIRS: Readonly<Record<ConvertedPair, Pair>> = {
  volume: {
    toUs: (v) => units.usGallonsFromLitres(units.litres(v)),
    toMetric: (v) => units.litresFromUsGallons(units.usGallons(v)),
    span: [0, 100],
  },
  "imperial volume": {
    toUs: (v) => units.imperialGallonsFromLitres(units.litres(v)),
    toMetric: (v) => units.litresFromImperialGallons(units.imperialGallons(v)),
    span: [0, 100],
  },
  quarts: {
    toUs: (v) => units.usQuartsFromLitres(units.litres(v)),
    toMetric: (v) => units.litresFromUsQuarts(units.usQuarts(v)),
    span: [0, 100],
  },
  "fluid ounces": {
    toUs: (v) => units.usFluidOuncesFromLitres(units.litres(v)),
    toMetric: (v) => units.litresFromUsFluidOunces(units.usFluidOunces(v)),
    span: [0, 10],
  },
  mass: {
    toUs: (v) => units.poundsFromKilograms(units.kilograms(v)),
    toMetric: (v) => units.kilogramsFromPounds(units.pounds(v)),
    span: [0, 100],
  },
  "small mass": {
    toUs: (v) => units.ouncesFromGrams(units.grams(v)),
    toMetric: (v) => units.gramsFromOunces(units.ounces(v)),
    span: [0, 1000],
  },
  temperature: {
    toUs: (v) => units.fahrenheitFromCelsius(units.celsius(v)),
    toMetric: (v) => units.celsiusFromFahrenheit(units.fahrenheit(v)),
    span: [-30, 130],
  },
  altitude: {
    toUs: (v) => units.feetFromMetres(units.metres(v)),
    toMetric: (v) => units.metresFromFeet(units.feet(v)),
    span: [-400, 5000],
  },
  "absolute pressure": {
    toUs: (v) => units.psiFromKilopascals(units.kilopascals(v)),
    toMetric: (v) => units.kilopascalsFromPsi(units.psi(v)),
    span: [0, 500],
  },
  "gauge pressure": {
    toUs: (v) => units.psiFromBar(units.bar(v)),
    toMetric: (v) => units.barFromPsi(units.psi(v)),
    span: [-1, 10],
  },
  "mash thickness": {
    toUs: (v) => units.quartsPerPoundFromLitresPerKilogram(units.litresPerKilogram(v)),
    toMetric: (v) => units.litresPerKilogramFromQuartsPerPound(units.quartsPerPound(v)),
    span: [1, 6],
  },
  "hop rate": {
    toUs: (v) => units.ouncesPerUsGallonFromGramsPerLitre(units.gramsPerLitre(v)),
    toMetric: (v) => units.gramsPerLitreFromOuncesPerUsGallon(units.ouncesPerUsGallon(v)),
    span: [0, 30],
  },
  flow: {
    toUs: (v) => units.usGallonsPerMinuteFromLitresPerMinute(units.litresPerMinute(v)),
    toMetric: (v) => units.litresPerMinuteFromUsGallonsPerMinute(units.usGallonsPerMinute(v)),
    span: [0, 50],
  },
};

describe("the units of US screens", () => {
  // Six figures are what the printed factors have.
  const near = (actual: number, expected: number): void =>
    expectWithin(actual, expected, 1e-6 * Math.max(0.1, Math.abs(expected)));

  it.each(CONVERSIONS)("$pair: $us is $metric ($source)", ({ pair, metric, us }) => {
    near(PAIRS[pair].toMetric(us), metric);
    near(PAIRS[pair].toUs(metric), us);
  });

  it.each(Object.entries(PAIRS))("%s comes back from a round trip", (_, { toUs, toMetric, span: [low, high] }) => {
    for (let i = 0; i <= 50; i += 1) {
      const value = low + (i * (high - low)) / 50;
      expectWithin(toMetric(toUs(value)), value, 1e-12 * Math.max(1, Math.abs(value)));
    }
  });

  it("refuses what is possible in neither unit", () => {
    expect(() => units.litresFromUsGallons(-1 as never)).toThrow("volume -1 US gal is outside 0 to 26418 US gal");
    expect(() => units.celsiusFromFahrenheit(500 as never)).toThrow("temperature 500 °F is outside -22 to 266 °F");
    expect(() => units.kilogramsFromPounds(Number.NaN as never)).toThrow("mass NaN lb is outside 0 to 220463 lb");
  });
});
