import { waterKg, waterL } from "./mass-balance";

/** Water as a plan asks for it or as it was poured, kg. */
export interface Water {
  readonly mashWaterKg: number;
  readonly spargeKg: number;
}

/** What was poured is not exactly what was planned. */
export interface UncertainWater {
  readonly name: "mash water" | "sparge water";
  /** Pours so many standard uncertainties more. */
  readonly move: (water: Water, deviations: number) => Water;
}

/** A volume is poured as well as a measuring stick tells, L, or to this share of a large one. Common practice, no source. */
const POURED = { least: 0.3, share: 0.01 } as const;

const FIELDS = [
  ["mash water", "mashWaterKg"],
  ["sparge water", "spargeKg"],
] as const;

/**
 * Lists the waters of a brew with how well they are measured out.
 *
 * @returns Mash and sparge water, as far as there is any.
 * @source Common practice (docs/sources.md#trade-practice)
 */
export function pouredWater(planned: Water): UncertainWater[] {
  return FIELDS.flatMap(([name, field]): UncertainWater[] => {
    const litres = waterL(planned[field]);
    if (litres <= 0) return [];
    // Nobody pours less than nothing.
    const sd = Math.min(waterKg(Math.max(POURED.least, POURED.share * litres)), planned[field] / 3);
    return [
      { name, move: (water, deviations) => ({ ...water, [field]: Math.max(0, water[field] + sd * deviations) }) },
    ];
  });
}
