import { describe, expect, it } from "vitest";
import { co2Volumes, co2VolumesAtAltitude, gaugePressure, gaugePressureAtAltitude } from "@/lib/calc/carbonation";
import { bar, celsius, feet, metres, metresFromFeet, psiFromBar, volumesCo2 } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const gaugeAt = (temperature: number, volumes: number, altitude: number): number =>
  gaugePressureAtAltitude({
    celsius: celsius(temperature),
    volumes: volumesCo2(volumes),
    altitudeM: metres(altitude),
  });
const atSea = (temperature: number, volumes: number): number =>
  gaugePressure({ celsius: celsius(temperature), volumes: volumesCo2(volumes) });
const volumesAt = (temperature: number, gauge: number, altitude: number): number =>
  co2VolumesAtAltitude({ celsius: celsius(temperature), gaugeBar: bar(gauge), altitudeM: metres(altitude) });

/** Air pressure of ISO 2533:1975 in kPa, and what the gauge must show more than at sea level, (101.325 − p) / 100. */
const THIN_AIR = [
  { altitude: 0, kPa: 101.325, more: 0 },
  { altitude: 500, kPa: 95.461, more: 0.05864 },
  { altitude: 1000, kPa: 89.875, more: 0.1145 },
  { altitude: 3000, kPa: 70.109, more: 0.31216 },
];

describe("gaugePressureAtAltitude", () => {
  it.each(THIN_AIR)("shows $more bar more where the air has $kPa kPa (ISO 2533:1975)", ({ altitude, more }) => {
    // Tables of the standard round altitudes to geopotential metres: 0.02 kPa.
    expectWithin(gaugeAt(4, 2.5, altitude) - atSea(4, 2.5), more, 0.0002);
    expectWithin(gaugeAt(15, 2, altitude) - atSea(15, 2), more, 0.0002);
  });

  it.each([2000, 4000, 6000])("adds about a psi for 2000 ft at %i ft (common practice, no source)", (altitude) => {
    const more = gaugeAt(4, 2.5, metresFromFeet(feet(altitude))) - atSea(4, 2.5);
    expectWithin(psiFromBar(bar(more)), altitude / 2000, 0.1);
  });

  it("is less below the sea", () => {
    expect(gaugeAt(4, 2.5, -400)).toBeLessThan(atSea(4, 2.5));
  });

  it("refuses an altitude without a cellar and a temperature without beer", () => {
    expect(() => gaugeAt(4, 2.5, 6001)).toThrow("altitude 6001 m is outside -450 to 6000 m");
    expect(() => gaugeAt(46, 2.5, 0)).toThrow("temperature 46 °C is outside -2 to 45 °C");
    const altitudeM = 7000 as never;
    expect(() => gaugePressureAtAltitude({ celsius: celsius(4), volumes: volumesCo2(2), altitudeM })).toThrow(
      "altitude 7000 m is outside -450 to 6000 m",
    );
  });
});

describe("co2VolumesAtAltitude", () => {
  it("is undone by gaugePressureAtAltitude", () => {
    for (const altitude of [-400, 0, 800, 2500, 5000]) {
      for (const volumes of [1, 2.4, 4]) {
        expectWithin(volumesAt(6, gaugeAt(6, volumes, altitude), altitude), volumes, 1e-12);
      }
    }
  });

  it("is that of sea level at sea level", () => {
    expect(volumesAt(4, 0.8, 0)).toBe(co2Volumes({ celsius: celsius(4), gaugeBar: bar(0.8) }));
  });

  it("takes up the little that a thin air and a gauge below it leave", () => {
    // 6000 m: air 47.181 kPa, so 0.0718 bar absolute; by hand 0.0718 × 1.3672 − 0.0033 volumes.
    expectWithin(volumesAt(4, -0.4, 6000), 0.095, 0.001);
  });

  it("refuses a gauge outside −0.4 to 19.9 bar and fills beer up to its ends", () => {
    expect(() => volumesAt(4, -0.41, 0)).toThrow("gauge pressure -0.41 bar is outside -0.4 to 19.9 bar");
    expect(() => volumesAt(4, 19.91, 0)).toThrow("gauge pressure 19.91 bar is outside -0.4 to 19.9 bar");
    expect(() => volumesAt(4, 19.9, 0)).toThrow("is outside 0 to 10 volumes");
    expect(volumesAt(45, 19.9, -450)).toBeLessThan(10);
  });
});
