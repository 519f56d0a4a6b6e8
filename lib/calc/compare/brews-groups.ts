import { type OneWayAnova, oneWayAnova, studentTQuantile } from "../statistics";

export interface BrewGroup {
  readonly name: string;
  readonly n: number;
  readonly mean: number;
  /** 80 % interval of the mean, by the scatter within all groups; null where no group has two that differ. */
  readonly low80: number | null;
  readonly high80: number | null;
}

export interface GroupedBrews {
  readonly groups: readonly BrewGroup[];
  /** Whether the groups differ; null where there is one group, or nothing to measure them by. */
  readonly anova: OneWayAnova | null;
}

/**
 * Splits results by group, each mean with the interval that the common scatter within the groups gives it.
 *
 * @returns Groups by their means, the largest first.
 * @source Scheffé 1959, one-way layout (docs/sources.md#scheffe-1959)
 */
export function groupBrews(results: readonly { readonly value: number; readonly group: string }[]): GroupedBrews {
  const byName = new Map<string, number[]>();
  for (const { group, value } of results) byName.set(group, [...(byName.get(group) ?? []), value]);
  const values = [...byName.values()];
  const differs = values.some((group) => group.some((value) => value !== group[0]));
  const anova = values.length > 1 && differs ? oneWayAnova(values) : null;
  const groups = [...byName].map(([name, group]): BrewGroup => {
    const mean = group.reduce((sum, value) => sum + value, 0) / group.length;
    if (anova === null) return { name, n: group.length, mean, low80: null, high80: null };
    const reach = (studentTQuantile({ p: 0.9, df: anova.withinDf }) * anova.residualSd) / Math.sqrt(group.length);
    return { name, n: group.length, mean, low80: mean - reach, high80: mean + reach };
  });
  return { groups: groups.sort((a, b) => b.mean - a.mean || (a.name < b.name ? -1 : 1)), anova };
}
