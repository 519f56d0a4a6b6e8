import type { Figure, FigureCorrelation } from "../ledger";
import type { KettlePrior } from "./kettle-prior";
import type { Posterior } from "./posterior";

/** Less does nothing to an interval. */
const LEAST_CORRELATION = 0.02;

/**
 * States which figures of a profile are off together.
 *
 * @returns Correlations of what the next brew finds, whose scatter is nobody else's.
 */
export function correlationsOf(
  { places, unit }: Pick<KettlePrior, "places" | "unit">,
  { covariance }: Posterior,
  figures: readonly { readonly figure: Figure<number> }[],
): FigureCorrelation[] {
  const size = places.length;
  const sdOf = (k: number): number => figures[k]?.figure.sd ?? 1;
  return places.flatMap(({ name: one }, i) =>
    places.slice(i + 1).flatMap(({ name: other }, after): FigureCorrelation[] => {
      const j = i + 1 + after;
      const both = (covariance[i * size + j] ?? 0) * (unit[i] ?? 0) * (unit[j] ?? 0);
      const coefficient = Math.min(1, Math.max(-1, both / (sdOf(i) * sdOf(j))));
      return Math.abs(coefficient) < LEAST_CORRELATION ? [] : [{ one, other, coefficient }];
    }),
  );
}
