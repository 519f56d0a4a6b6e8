import { grubbs, medianAbsoluteDeviation, modifiedZ } from "../statistics";

/** Share of sound sets of brews in which Grubbs' test may call one stray. */
export const STRAY_LEVEL = 0.05;
/** From so many on, the modified z, which finds several strays at once; with fewer its scatter is too rough. */
export const MANY_BREWS = 10;
/** What the source calls stray. */
const STRAY_Z = 3.5;

export interface StrayBrew {
  readonly id: string;
  /** Grubbs' G, or the modified z. */
  readonly statistic: number;
}

export type StrayBrews =
  | {
      readonly ok: true;
      readonly test: "Grubbs" | "modified z";
      /** Of Grubbs' test alone: the share of sound sets in which it speaks. */
      readonly level: number | null;
      /** What the statistic is held against. */
      readonly critical: number;
      readonly stray: readonly StrayBrew[];
    }
  | { readonly ok: false; readonly reason: "too-few" | "no-scatter" };

/**
 * Names the brews that lie too far out to belong to the others, and the test that says so.
 *
 * @returns The test with its level or limit, and whom it names; or why none speaks.
 * @source Grubbs 1969 (docs/sources.md#nist-ehandbook); Iglewicz and Hoaglin 1993 (docs/sources.md#iglewicz-hoaglin-1993)
 */
export function strayBrews(results: readonly { readonly id: string; readonly value: number }[]): StrayBrews {
  if (results.length < 3) return { ok: false, reason: "too-few" };
  const values = results.map(({ value }) => value);
  return results.length < MANY_BREWS ? byGrubbs(results, values) : byModifiedZ(results, values);
}

function byGrubbs(results: readonly { readonly id: string }[], values: readonly number[]): StrayBrews {
  const tested = grubbs({ values, alpha: STRAY_LEVEL });
  if (!tested.ok) return tested;
  const { g, critical, outlying, index } = tested;
  const id = results[index]?.id ?? "";
  return { ok: true, test: "Grubbs", level: STRAY_LEVEL, critical, stray: outlying ? [{ id, statistic: g }] : [] };
}

function byModifiedZ(results: readonly { readonly id: string }[], values: readonly number[]): StrayBrews {
  if (medianAbsoluteDeviation(values).deviation === 0) return { ok: false, reason: "no-scatter" };
  const tested = modifiedZ(values);
  if (!tested.ok) return { ok: false, reason: "no-scatter" };
  const stray = tested.stray.map((place) => ({ id: results[place]?.id ?? "", statistic: tested.z[place] ?? 0 }));
  return { ok: true, test: "modified z", level: null, critical: STRAY_Z, stray };
}
