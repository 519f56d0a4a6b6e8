import type { MeasurableQuantity } from "../compare";
import { FIGURES, type Equipment } from "../ledger";
import { cholesky, inverse } from "../numerics/cholesky";
import { brewScatter } from "./brew-scatter";
import { instrumentCovariance, type Leaning } from "./leaning";
import { product } from "./product";

/** Once in two thousand readings chance goes as far, in standard deviations. */
const STRAY = 3.5;
/** A kettle that has changed shows as well: a figure may be this many of its brews' scatters elsewhere beside its uncertainty. */
const SCATTERS = 2;

/**
 * Finds readings that are far from what all the others and the plan together make of them.
 *
 * The covariance S of all readings has the instruments in it, what is fresh with each brew, and the figures as far as they may
 * be off; [S⁻¹ r]ᵢ over √[S⁻¹]ᵢᵢ is a reading's distance from its value given the others. The farthest is taken out while it is
 * too far.
 *
 * @returns Quantities whose readings stray.
 * @source Cook and Weisberg 1982, 2.2.1, deleted residuals (docs/sources.md#cook-weisberg-1982)
 */
export function strayReadings(equipment: Equipment, all: readonly Leaning[]): MeasurableQuantity[] {
  const variances = FIGURES.map(({ name, of }) => {
    const { value, sd } = of(equipment);
    return { name, variance: sd ** 2 + (SCATTERS * brewScatter(name, value)) ** 2 };
  });
  const stray: MeasurableQuantity[] = [];
  let rows = all;
  while (rows.length > 1) {
    const distances = distancesOf(rows, variances);
    const worst = distances.reduce((most, z, i) => (Math.abs(z) > Math.abs(distances[most] ?? 0) ? i : most), 0);
    const row = rows[worst];
    if (row === undefined || Math.abs(distances[worst] ?? 0) <= STRAY) break;
    stray.push(row.quantity);
    rows = rows.filter((each) => each !== row);
  }
  return stray;
}

function distancesOf(
  rows: readonly Leaning[],
  variances: readonly { readonly name: (typeof FIGURES)[number]["name"]; readonly variance: number }[],
): number[] {
  const size = rows.length;
  const covariance = instrumentCovariance(rows);
  for (const { name, variance } of variances) {
    const by = rows.map(({ figures }) => figures.get(name) ?? 0);
    by.forEach((one, i) => {
      by.forEach((other, j) => {
        covariance[i * size + j] = (covariance[i * size + j] ?? 0) + one * other * variance;
      });
    });
  }
  const inverted = inverse(cholesky(covariance, size));
  const residuals = rows.map(({ residual }) => residual);
  return residuals.map((_, i) => product(inverted, i, residuals) / Math.sqrt(inverted[i * size + i] ?? 1));
}
