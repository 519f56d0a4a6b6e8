import { describe, expect, it } from "vitest";
import { sensorReading, toMeasured } from "@/lib/model/sensor/sensor-reading";

const NOW = new Date("2026-11-28T12:00:00Z");
const BREW = "0198f000-0000-7000-8000-000000000001";
const sent = (change: object = {}) => ({
  brew: BREW,
  at: "2026-11-28T10:00:00Z",
  quantity: "fermenter.temperature",
  value: 20,
  unit: "°C",
  ...change,
});
const read = (change: object = {}) => toMeasured(sensorReading.parse(sent(change)), NOW);
const valueOf = (change: object) => {
  const answer = read(change);
  return answer.ok ? answer.measured.value : NaN;
};
const reasonOf = (change: object) => {
  const answer = read(change);
  return answer.ok ? "" : answer.reason;
};
const refusal = (change: object) => sensorReading.safeParse(sent(change)).error?.issues[0]?.message;

describe("a reading of a sensor", () => {
  it("comes into the log in the unit of the log, with what was sent beside it", () => {
    expect(read()).toEqual({
      ok: true,
      occurredAt: "2026-11-28T10:00:00.000Z",
      measured: {
        ...{ kind: "temperature", quantity: "fermenter.temperature", value: 20, sd: 0.5, instrument: "probe" },
        ...{ sampleC: null, note: "", entered: "20 °C", step: null },
      },
    });
  });

  it.each([
    // By definition: 68 °F = (68 − 32) × 5/9 °C.
    [{ value: 68, unit: "°F" }, 20, 9],
    // By definition: a US gallon is 3.785411784 L, an imperial one 4.54609 L.
    [{ quantity: "fermenter.volume", value: 5, unit: "US gal" }, 18.92705892, 9],
    [{ quantity: "fermenter.volume", value: 5, unit: "imp gal" }, 22.73045, 9],
    // By definition: a pound-force per square inch is 6.894757 kPa.
    [{ quantity: "fermenter.pressure", value: 14.5, unit: "psi" }, 0.99974, 5],
    [{ quantity: "fermenter.pressure", value: 120, unit: "kPa" }, 1.2, 12],
    [{ quantity: "kettle.heatingTime", value: 90, unit: "s" }, 1.5, 12],
    [{ quantity: "kettle.heatingTime", value: 1.5, unit: "h" }, 90, 12],
  ])("is converted: %j", (change, expected, digits) => {
    expect(valueOf(change)).toBeCloseTo(expected, digits);
  });

  it("may be a specific gravity", () => {
    // 12 °P is 1.0484 in the sucrose tables: NBS Circular C440 (1942). Half of the last printed digit is 0.012 °P.
    expect(Math.abs(valueOf({ quantity: "fermenter.gravity", value: 1.0484, unit: "SG" }) - 12)).toBeLessThan(0.0125);
  });

  it("has its uncertainty converted as a difference", () => {
    const sdOf = (change: object) => {
      const answer = read(change);
      return answer.ok ? answer.measured.sd : NaN;
    };
    expect(sdOf({ value: 68, unit: "°F", sd: 1.8 })).toBeCloseTo(1, 9);
    // Between 1.0464 (11.53 °P) and 1.0505 (12.47 °P) of the tables, 0.001 SG is about 0.24 °P.
    expect(sdOf({ quantity: "fermenter.gravity", value: 1.0484, unit: "SG", sd: 0.001 })).toBeCloseTo(0.24, 2);
    expect(sdOf({ quantity: "fermenter.pressure", value: 100, unit: "kPa", sd: 5 })).toBeCloseTo(0.05, 9);
  });

  it.each([
    [{ value: 250, unit: "°F" }, "value 250 °F, which is 121.11 °C: Temperature in the fermenter takes -10 to 60 °C"],
    [{ value: 300, unit: "°F" }, "value 300 °F: Temperature in the fermenter takes -10 to 60 °C"],
    [{ value: -11 }, "value -11 °C: Temperature in the fermenter takes -10 to 60 °C"],
    [{ sd: 71 }, "sd 71 °C: Temperature in the fermenter takes 0 to 70 °C"],
    [{ unit: "bar" }, "unit “bar”: Temperature in the fermenter is sent in °C, °F"],
    [
      { at: "1999-12-31T23:59:59Z" },
      "at “1999-12-31T23:59:59Z”: it takes a time from the year 2000 to 24 hours from now",
    ],
    [
      { at: "2026-11-29T12:00:01Z" },
      "at “2026-11-29T12:00:01Z”: it takes a time from the year 2000 to 24 hours from now",
    ],
  ])("is refused with field, value and range: %j", (change, reason) => {
    expect(reasonOf(change)).toBe(reason);
  });

  it.each([
    [{ value: "20" }, "value “20”: it takes a number"],
    [{ value: undefined }, "value is missing: it takes a number"],
    [{ value: NaN }, "value null: it takes a number"],
    [{ sd: -1 }, "sd -1: it takes a number from 0"],
    [{ at: "yesterday" }, "at “yesterday”: it takes a time with a zone, as 2026-11-28T10:00:00Z"],
    [{ at: "2026-11-28T10:00:00" }, "at “2026-11-28T10:00:00”: it takes a time with a zone, as 2026-11-28T10:00:00Z"],
    [{ at: "2026-02-30T10:00:00Z" }, "at “2026-02-30T10:00:00Z”: it takes a time with a zone, as 2026-11-28T10:00:00Z"],
    [{ brew: "mine" }, "brew “mine”: it takes the identifier of a record"],
    [{ note: "\u0007" }, "note: it has characters that cannot be printed"],
  ])("is refused by its form: %j", (change, message) => {
    expect(refusal(change)).toBe(message);
  });

  it("takes only the fields and words that there are", () => {
    expect(sensorReading.safeParse(sent({ admin: true })).success).toBe(false);
    expect(refusal({ unit: "K" })).toMatch(/^unit “K”: it is one of °C, °F, °P, SG,/);
    expect(refusal({ quantity: "__proto__" })).toMatch(/^quantity “__proto__”: it is one of /);
  });
});
