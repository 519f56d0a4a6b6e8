import { primingSugar, residualCo2, type PrimingSugarKind } from "@/lib/calc/carbonation";
import { celsius, litres, volumesCo2, type Grams, type VolumesCo2 } from "@/lib/calc/units";
import type { FilledContainer } from "../log/log-event";
import { pressureOf } from "./package-pressure";

/** What is decided for packaging. */
export interface PackagingChoice {
  readonly litres: number;
  readonly volumesCo2: number;
  /** Warmest that the beer has been since fermentation ended. */
  readonly celsius: number;
  readonly storageC: number;
  /** null when the gas comes from a cylinder. */
  readonly sugar: PrimingSugarKind | null;
}

/** What follows from it. */
export interface PackagingPlan {
  readonly residual: VolumesCo2;
  readonly sugarGrams: Grams | null;
  /** Gauge pressure at the warmest place of storage, bar. */
  readonly pressureBar: number;
}

export function planPackaging(choice: PackagingChoice): PackagingPlan {
  const warmest = celsius(choice.celsius);
  const { sugar } = choice;
  return {
    residual: residualCo2(warmest),
    sugarGrams:
      sugar === null
        ? null
        : primingSugar({
            litres: litres(choice.litres),
            targetVolumes: volumesCo2(choice.volumesCo2),
            celsius: warmest,
            sugar,
          }),
    pressureBar: pressureOf(choice),
  };
}

/** What the full containers hold together, L. */
export function filledLitres(containers: readonly Pick<FilledContainer, "litres" | "count">[]): number {
  return containers.reduce((sum, { litres: each, count }) => sum + each * count, 0);
}

/** How many whole containers the beer fills. */
export function countFor(beerL: number, containerL: number): number {
  // A third of a litre is not quite 0.33 in binary.
  return Math.floor(beerL / containerL + 1e-9);
}
