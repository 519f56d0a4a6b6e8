import { describe, expect, it } from "vitest";
import type { Preferences } from "@/lib/model/preferences";
import { digitsForInterval } from "@/lib/ui/digits-for-interval";
import { formatDifference } from "@/lib/ui/format-difference";
import { formatQuantity } from "@/lib/ui/format-quantity";

const METRIC: Preferences = { units: "metric", gravity: "plato", colour: "ebc", theme: "auto" };
const US: Preferences = { units: "us", gravity: "sg", colour: "srm", theme: "auto" };

function shown(a: Omit<Parameters<typeof formatQuantity>[0], "preferences">, preferences = METRIC): string {
  const { text, unit, interval } = formatQuantity({ ...a, preferences });
  return interval === null ? `${text} ${unit}` : `${text} ${interval} ${unit}`;
}

describe("formatQuantity", () => {
  it("prints metric units with the digits of the dimension", () => {
    expect(shown({ value: 23.44, dimension: "volume" })).toBe("23.4 L");
    expect(shown({ value: 4.5, dimension: "mass" })).toBe("4.50 kg");
    expect(shown({ value: 12, dimension: "extract" })).toBe("12.0 °P");
    expect(shown({ value: 0.716, dimension: "fraction" })).toBe("71.6 %");
  });

  // NIST SP 811, appendix B.8: 1 US gal = 3.785411784 L, 1 lb = 0.45359237 kg; 20 °C is 68 °F by definition.
  it("prints US units", () => {
    expect(shown({ value: 3.785411784, dimension: "volume" }, US)).toBe("1.00 gal");
    expect(shown({ value: 0.45359237, dimension: "mass" }, US)).toBe("1.00 lb");
    expect(shown({ value: 20, dimension: "temperature" }, US)).toBe("68 °F");
  });

  // NBS Circular C440 (1942), table 113: 12 °P is 1.0484; EBC = 1.97 × SRM, Analytica-EBC 9.6.
  it("prints gravity and colour on the scale of the person", () => {
    expect(shown({ value: 12, dimension: "extract" }, US)).toBe("1.048 SG");
    expect(shown({ value: 19.7, dimension: "colour" }, US)).toBe("10.0 SRM");
  });

  it("gives a value as many digits as its interval deserves", () => {
    expect(shown({ value: 23.44, dimension: "volume", interval: { low80: 22.84, high80: 24.04 } })).toBe(
      "23.4 ± 0.6 L",
    );
    expect(shown({ value: 23.44, dimension: "volume", interval: { low80: 18.4, high80: 28.4 } })).toBe("23 ± 5 L");
    expect(shown({ value: 12.02, dimension: "extract", interval: { low80: 11.9, high80: 12.14 } })).toBe(
      "12.0 ± 0.1 °P",
    );
  });

  it("prints both ends of a lopsided interval", () => {
    expect(shown({ value: 12, dimension: "volume", interval: { low80: 11, high80: 15 } })).toBe("12.0 11.0–15.0 L");
  });

  it("prints an end below nothing without refusing it", () => {
    expect(shown({ value: 0.5, dimension: "volume", interval: { low80: -0.1, high80: 1.1 } }, US)).toBe(
      "0.13 ± 0.16 gal",
    );
    expect(shown({ value: 0.2, dimension: "extract", interval: { low80: -0.3, high80: 0.7 } }, US)).toContain("SG");
  });

  it("prints no interval that its digits cannot show", () => {
    expect(shown({ value: 12, dimension: "extract", interval: { low80: 11.99, high80: 12.01 } })).toBe("12.0 °P");
  });

  it("tells a long day in hours", () => {
    expect(shown({ value: 179, dimension: "minutes" })).toBe("179 min");
    expect(shown({ value: 320, dimension: "minutes" })).toBe("5 h 20 min");
  });

  it("says the unit in words, the interval with it", () => {
    const { spoken } = formatQuantity({
      value: 23.44,
      dimension: "volume",
      preferences: METRIC,
      interval: { low80: 22.84, high80: 24.04 },
    });
    expect(spoken).toBe("23.4 litres, 80 per cent interval plus or minus 0.6");
  });

  it("never prints a minus before zero", () => {
    expect(shown({ value: -0.01, dimension: "temperature" })).toBe("0.0 °C");
  });
});

describe("digitsForInterval", () => {
  // Two significant digits up to 2.9, one from 3: JCGM 100:2008, 7.2.6 allows at most two.
  it.each([
    [0.6, 1],
    [1.4, 1],
    [2.9, 1],
    [3, 0],
    [12, 0],
    [0.25, 2],
  ])("keeps the significant digits of a half-width of %s", (half, digits) => {
    expect(digitsForInterval(half, 3)).toBe(digits);
  });

  it("stops at the usual digits", () => {
    expect(digitsForInterval(0.00001, 1)).toBe(1);
  });
});

describe("formatDifference", () => {
  it("signs the difference and takes no zero point with it", () => {
    const celsius = formatDifference({ value: 67, from: 65, dimension: "temperature", preferences: METRIC });
    expect(celsius.text).toBe("+2.0");
    // 2 °C apart is 3.6 °F apart, not 35.6.
    const fahrenheit = formatDifference({ value: 67, from: 65, dimension: "temperature", preferences: US });
    expect(fahrenheit.text).toBe("+4");
  });

  it("says less and more in words", () => {
    const less = formatDifference({ value: 20, from: 21.5, dimension: "volume", preferences: METRIC });
    expect(less).toMatchObject({ text: "−1.5", spoken: "1.5 litres less" });
    const none = formatDifference({ value: 20, from: 20.01, dimension: "volume", preferences: METRIC });
    expect(none).toMatchObject({ text: "0.0", spoken: "no difference" });
  });
});
