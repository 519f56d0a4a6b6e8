import { requireInRange } from "../errors";
import { degreesBrix, type Celsius, type DegreesBrix } from "../units";
import { CORRECTIONS, READINGS, TEMPERATURES } from "./tables/refractometer-temperature";

export const COLD_READING_RANGE = {
  brix: { unit: "°Bx", min: 10, max: 30 },
  celsius: { unit: "°C", min: 5, max: 20 },
} as const;

/**
 * Corrects the reading of a refractometer without temperature compensation to 20 °C.
 *
 * A drop takes the temperature of the prism at once, so that is the temperature that counts. Straight lines between the
 * rows of the table.
 *
 * @param a.brix - Reading of wort, °Bx.
 * @param a.celsius - Temperature of the prism, °C.
 * @returns Reading that it would give at 20 °C, °Bx, within 0.02.
 * @validRange 10 to 30 °Bx and 5 to 20 °C, the part of the table that was at hand.
 * @throws {@link OutOfRangeError} when reading or temperature is outside the valid range.
 * @source OIV-MA-AS2-02, table I (docs/sources.md#oiv-ma-as2-02)
 * @example
 * correctRefractometer({ brix: degreesBrix(15), celsius: celsius(12) }); // 14.49
 */
export function correctRefractometer({
  brix,
  celsius,
}: {
  readonly brix: DegreesBrix;
  readonly celsius: Celsius;
}): DegreesBrix {
  requireInRange("refractometer reading", brix, COLD_READING_RANGE.brix);
  requireInRange("prism temperature", celsius, COLD_READING_RANGE.celsius);
  const [row, below] = place(TEMPERATURES, celsius);
  const [column, left] = place(READINGS, brix);
  const at = (line: number): number => mix(CORRECTIONS[line]?.[column], CORRECTIONS[line]?.[column + 1], left);
  return degreesBrix(brix + mix(at(row), at(row + 1), below));
}

/** The interval of a rising scale that holds a value, and how far into it the value lies. */
function place(scale: readonly number[], value: number): readonly [index: number, share: number] {
  let index = 0;
  while (index < scale.length - 2 && value >= (scale[index + 1] ?? Infinity)) index += 1;
  const from = scale[index] ?? 0;
  return [index, (value - from) / ((scale[index + 1] ?? 1) - from)];
}

const mix = (from = 0, to = 0, share: number): number => from + share * (to - from);
