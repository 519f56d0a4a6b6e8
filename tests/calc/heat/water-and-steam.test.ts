import { describe, expect, it } from "vitest";
import {
  airPressure,
  boilingPoint,
  boilingPointElevation,
  evaporationFlux,
  latentHeat,
  saturationPressure,
} from "@/lib/calc/heat";
import { celsius, degreesPlato, fraction, metres, metresPerSecond } from "@/lib/calc/units";
import { LATENT_HEAT_TABLE, VAPOUR_PRESSURE_TABLE } from "../../reference/steam";
import { expectWithin } from "../../support/expect-within";

describe("saturationPressure", () => {
  it("is 2.339 kPa at 20 °C (IAPWS)", () => {
    expectWithin(saturationPressure(celsius(20)), 2.339, 0.02);
  });

  it.each(VAPOUR_PRESSURE_TABLE)(
    "is within 0.7 % of $megapascals MPa at $at °C (steam tables)",
    ({ at, megapascals }) => {
      expectWithin(saturationPressure(celsius(at)) / (1000 * megapascals), 1, 0.007);
    },
  );

  it("is one atmosphere at 100 °C (definition of the scale, to 0.1 kPa)", () => {
    expectWithin(saturationPressure(celsius(100)), 101.325, 0.1);
  });

  it("refuses to leave the span of the fit", () => {
    expect(() => saturationPressure(celsius(100.5))).toThrow("temperature 100.5 °C is outside 0 to 100 °C");
    expect(() => saturationPressure(celsius(-1))).toThrow("temperature -1 °C is outside 0 to 100 °C");
  });
});

describe("airPressure", () => {
  it.each([
    { altitude: 0, pascals: 101325 },
    { altitude: 500, pascals: 95460.8 },
    { altitude: 1000, pascals: 89874.6 },
  ])("is $pascals Pa at $altitude m (US Standard Atmosphere 1976, ISO 2533)", ({ altitude, pascals }) => {
    expectWithin(1000 * airPressure({ altitudeM: metres(altitude) }), pascals, 3);
  });

  it("refuses altitudes where nobody brews", () => {
    const high = JSON.parse("6001") as ReturnType<typeof metres>;
    expect(() => airPressure({ altitudeM: high })).toThrow("altitude 6001 m is outside -450 to 6000 m");
  });
});

describe("boilingPoint", () => {
  it.each([
    { altitude: 0, boils: 100 },
    { altitude: 1000, boils: 96.68 },
    { altitude: 1609, boils: 94.66 },
    { altitude: 3000, boils: 90.03 },
  ])("is $boils °C at $altitude m (standard atmosphere and Antoine equation by hand)", ({ altitude, boils }) => {
    expectWithin(boilingPoint({ altitudeM: metres(altitude) }), boils, 0.05);
  });

  it("is 90.0 °C where the air has 70.1085 kPa, at 3000 m (IAPWS saturation)", () => {
    expectWithin(boilingPoint({ altitudeM: metres(3000) }), 90, 0.15);
  });

  it("is the temperature whose vapour pressure is the air's", () => {
    const altitudeM = metres(2200);
    expectWithin(saturationPressure(boilingPoint({ altitudeM })), airPressure({ altitudeM }), 1e-9);
  });
});

describe("boilingPointElevation", () => {
  it("is 0.204 K at 12 °P (0.512 × 1000 × 12 / 342.3 / 88)", () => {
    expectWithin(boilingPointElevation(degreesPlato(12)), 0.204, 0.02);
  });

  it("is nothing for water, and grows faster than the strength", () => {
    expect(boilingPointElevation(degreesPlato(0))).toBe(0);
    expect(boilingPointElevation(degreesPlato(24))).toBeGreaterThan(2 * boilingPointElevation(degreesPlato(12)));
  });

  it("refuses syrups", () => {
    expect(() => boilingPointElevation(degreesPlato(36))).toThrow("extract 36 °P is outside 0 to 35 °P");
  });
});

describe("latentHeat", () => {
  it.each(LATENT_HEAT_TABLE)("is within 0.1 of $kJPerKg kJ/kg at $at °C (steam tables)", ({ at, kJPerKg }) => {
    expectWithin(latentHeat(celsius(at)) / 1000, kJPerKg, 0.1);
  });

  it("refuses ice and pressurised steam", () => {
    expect(() => latentHeat(celsius(-1))).toThrow("temperature -1 °C is outside 0 to 102 °C");
    expect(() => latentHeat(celsius(103))).toThrow("temperature 103 °C is outside 0 to 102 °C");
  });
});

describe("evaporationFlux", () => {
  // Air of 1.2 kPa vapour pressure: 20 °C at 1.2 / 2.3295.
  const still = { ambientC: celsius(20), relativeHumidity: fraction(1.2 / 2.3295), airSpeed: metresPerSecond(0.1) };

  it("is 0.388 kg/h from 0.1 m² at 67 °C (Carrier's equation by hand)", () => {
    expectWithin(0.1 * evaporationFlux({ ...still, celsius: celsius(67) }), 0.388, 0.03);
  });

  it("carries off 252 W from 0.1 m² at 67 °C (the same)", () => {
    const water = celsius(67);
    expectWithin((0.1 * evaporationFlux({ ...still, celsius: water }) * latentHeat(water)) / 3600, 252, 8);
  });

  it("is nothing where the air's vapour pressure is the water's, or above it", () => {
    const damp = { ...still, relativeHumidity: fraction(1) };
    expect(evaporationFlux({ ...damp, celsius: celsius(20) })).toBe(0);
    expect(evaporationFlux({ ...damp, celsius: celsius(10) })).toBe(0);
  });

  it("grows with temperature and with wind", () => {
    const at60 = evaporationFlux({ ...still, celsius: celsius(60) });
    expect(evaporationFlux({ ...still, celsius: celsius(61) })).toBeGreaterThan(at60);
    expect(evaporationFlux({ ...still, celsius: celsius(60), airSpeed: metresPerSecond(1) })).toBeGreaterThan(at60);
  });

  it("refuses air that no brewer stands in", () => {
    expect(() => evaporationFlux({ ...still, celsius: celsius(60), ambientC: celsius(61) })).toThrow(
      "air temperature 61 °C is outside -30 to 60 °C",
    );
  });
});
