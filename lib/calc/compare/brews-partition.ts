import {
  PARTITION_RANGE,
  type PartitionFactor,
  type PartitionObservation,
  type VariancePartition,
  variancePartition,
} from "../statistics";

/** A factor of which these brews say nothing of its own, and with what it always changes together. */
export interface UntoldFactor {
  readonly factor: PartitionFactor;
  readonly together: readonly (PartitionFactor | "residual")[];
}

export type BrewPartition =
  | (Extract<VariancePartition, { readonly ok: true }> & { readonly untold: readonly UntoldFactor[] })
  | {
      readonly ok: false;
      readonly reason: Extract<VariancePartition, { readonly ok: false }>["reason"] | "too-few" | "too-many";
      readonly untold: readonly UntoldFactor[];
    };

/** What is given up first where factors cannot be told apart: who brewed changes with nearly everything else. */
const GIVEN_UP: readonly PartitionFactor[] = ["brewer", "revision", "equipment"];

/**
 * Splits the variance of brews into shares of brewer, kettle, revision and the rest, leaving out what cannot be told.
 *
 * Where factors always change together, as where each brewer brewed once, one of them is given up and named, and the
 * others are told with what it explains among the rest.
 *
 * @param a.observations - Results with brewer, kettle and revision of each.
 * @returns The partition with the factors that were given up; or why there is none.
 * @validRange From 3 to 2000 brews and up to 200 brewers, kettles and revisions; other numbers are answered as such.
 * @throws {@link OutOfRangeError} when a value is not a number.
 * @source Searle, Casella and McCulloch 1992, chapters 6 and 8 (docs/sources.md#searle-1992)
 * @example
 * partitionBrews({ observations: [{ value: 12.1, brewer: "a", equipment: "bag", revision: "1" }, …] }); // untold: brewer, with the rest
 */
export function partitionBrews({
  observations,
}: {
  readonly observations: readonly PartitionObservation[];
}): BrewPartition {
  if (observations.length < PARTITION_RANGE.observations.min) return { ok: false, reason: "too-few", untold: [] };
  const untold: UntoldFactor[] = [];
  let rest = observations;
  for (;;) {
    if (isTooMuch(rest)) return { ok: false, reason: "too-many", untold };
    const partition = variancePartition({ observations: rest });
    if (partition.ok) return { ...partition, untold };
    const { reason, together } = partition;
    const factor = GIVEN_UP.find((each) => reason === "confounded" && together.includes(each));
    if (factor === undefined) return { ok: false, reason, untold };
    untold.push({ factor, together: together.filter((each) => each !== factor) });
    rest = rest.map((observation) => ({ ...observation, [factor]: "" }));
  }
}

function isTooMuch(observations: readonly PartitionObservation[]): boolean {
  const levels = GIVEN_UP.reduce((sum, factor) => sum + new Set(observations.map((each) => each[factor])).size, 0);
  return observations.length > PARTITION_RANGE.observations.max || levels > PARTITION_RANGE.levels.max;
}
