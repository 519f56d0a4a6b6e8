import { describe, expect, it } from "vitest";
import { correctRefractometer } from "@/lib/calc/gravity";
import { celsius, degreesBrix } from "@/lib/calc/units";
import { expectWithin } from "../../support/expect-within";

const correction = (brix: number, prismC: number): number =>
  correctRefractometer({ brix: degreesBrix(brix), celsius: celsius(prismC) }) - brix;

describe("correctRefractometer", () => {
  it.each([
    { brix: 10, prismC: 10, printed: -0.59 },
    { brix: 10, prismC: 15, printed: -0.32 },
    { brix: 20, prismC: 10, printed: -0.65 },
    { brix: 20, prismC: 15, printed: -0.34 },
    { brix: 15, prismC: 5, printed: -0.87 },
    { brix: 15, prismC: 12, printed: -0.51 },
    { brix: 30, prismC: 17, printed: -0.22 },
    { brix: 25, prismC: 6, printed: -0.9 },
  ])("is $printed for $brix °Bx at $prismC °C (OIV-MA-AS2-02, table I)", ({ brix, prismC, printed }) => {
    expectWithin(correction(brix, prismC), printed, 1e-9);
  });

  it("lies on straight lines between the printed rows and columns", () => {
    // Halfway between −0.59 and −0.62, and between −0.59 and −0.54.
    expectWithin(correction(12.5, 10), -0.605, 1e-9);
    expectWithin(correction(10, 10.5), -0.565, 1e-9);
    // A third of the way from 17 °C, −0.20, to 20 °C.
    expectWithin(correction(10, 18), -0.4 / 3, 1e-9);
    // The middle of four: −0.59, −0.62, −0.54, −0.57.
    expectWithin(correction(12.5, 10.5), -0.58, 1e-9);
  });

  it("leaves a reading at 20 °C as it is", () => {
    for (const brix of [10, 17, 30]) expectWithin(correction(brix, 20), 0, 1e-12);
  });

  it("takes off more the colder the prism is", () => {
    const byTemperature = Array.from({ length: 31 }, (_, i) => correction(22, 5 + i / 2));
    expect(byTemperature).toEqual([...byTemperature].sort((a, b) => a - b));
  });

  it("refuses what the table does not reach", () => {
    expect(() => correction(9.9, 10)).toThrow("refractometer reading 9.9 °Bx is outside 10 to 30 °Bx");
    expect(() => correction(30.1, 10)).toThrow("refractometer reading 30.1 °Bx is outside 10 to 30 °Bx");
    expect(() => correction(12, 4.9)).toThrow("prism temperature 4.9 °C is outside 5 to 20 °C");
    expect(() => correction(12, 20.1)).toThrow("prism temperature 20.1 °C is outside 5 to 20 °C");
  });
});
