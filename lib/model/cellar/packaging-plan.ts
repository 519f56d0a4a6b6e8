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

/** Containers are filled to within a few per cent of the size that is written on them. Common practice, no source. */
export const FILLING_SHARE = 0.02;

/** How much more the containers hold than there is beer, L; 0 where that is within how well they are filled. */
export function missingLitres({
  beerL,
  lostL,
  filledL,
}: Readonly<Record<"beerL" | "lostL" | "filledL", number>>): number {
  const missing = filledL - (beerL - lostL);
  return missing > FILLING_SHARE * filledL ? missing : 0;
}
