import { requireInRange } from "../errors";
import { FIGURES, type Equipment } from "../ledger";
import { kindFigures, type KindFigure } from "./kind-figures";
import { kindOf } from "./kind-of";
import { ownInformation, type KettleOfKind } from "./own-information";
import { pooledProfile, type PooledProfile } from "./pooled-profile";
import { requireEvidence } from "./require-evidence";

export const POOL_RANGE = {
  kettles: { unit: "", min: 0, max: 500 },
  brews: { unit: "", min: 0, max: 1000 },
} as const;

export interface Pool {
  /** What the kettles tell of the kind, for a kettle of the size of `start`, in the order of the profile. */
  readonly figures: readonly KindFigure[];
  /** The profile that a new kettle starts from. */
  readonly start: PooledProfile;
  /** Each kettle given, drawn towards its kind as far as its own brews leave it open. */
  readonly kettles: readonly PooledProfile[];
}

/**
 * Learns what kettles of one kind have in common, what a new one should start from, and each kettle with the help of the others.
 *
 * Figures are compared as distances from what is typical for a kettle of that size, in units of the typical uncertainty, so a
 * large and a small kettle can be of one kind. The mean of the kind and the spread between its kettles have weak priors that
 * together are the typical uncertainty: without brews a new kettle starts from the typical figures, unchanged. The spread is
 * integrated over, not picked; figures that brews cannot tell apart stay tied together.
 *
 * @param a.start - Typical figures of the kettle that is to start.
 * @param a.kettles - Kettles of the kind with their brews; one or two help already.
 * @returns Mean of the kind, sd between its kettles, the profile of a new kettle, and the profile of each kettle.
 * @validRange Up to 500 kettles with up to 1000 brews each.
 * @throws {@link OutOfRangeError} when there are too many, or evidence is not what `brewEvidence` gives.
 * @source Gelman and others 2013, chapter 5 and 15 (docs/sources.md#gelman-2013); Gelman 2006 (docs/sources.md#gelman-2006)
 * @example
 * pool({ start: typical, kettles: [{ typical, equipment, brews }] }).start.equipment.kettle.boilOff;
 * // { value: 2.3, sd: 0.28, from: "learned", count: 4 }
 */
export function pool(a: { readonly start: Equipment; readonly kettles: readonly KettleOfKind[] }): Pool {
  requireInRange("number of kettles", a.kettles.length, POOL_RANGE.kettles);
  for (const { brews } of a.kettles) {
    requireInRange("number of brews", brews.length, POOL_RANGE.brews);
    for (const brew of brews) requireEvidence(brew);
  }
  const places = FIGURES.filter(({ of }) => of(a.start).sd > 0);
  const kettles = a.kettles.map((kettle) => ownInformation(places, kettle));
  const kind = kindOf(kettles, places.length);
  return {
    figures: kindFigures(places, a.start, kind),
    start: pooledProfile({ places, typical: a.start, base: a.start, own: null, kind }),
    kettles: kettles.map((own, i) => {
      const { typical, equipment: base } = a.kettles[i] ?? { typical: a.start, equipment: a.start };
      return pooledProfile({ places, typical, base, own, kind });
    }),
  };
}
