import type { Equipment, Figure, FigureCorrelation, FigureName, FigurePlace } from "../ledger";
import { brewScatter } from "./brew-scatter";
import { correlationsOf } from "./correlations-of";
import { drawnTo, type Kind } from "./kind-of";
import type { OwnInformation } from "./own-information";
import { withinBounds, type Posterior } from "./posterior";
import { product } from "./product";

/** A figure of a kettle with the help of its kind. */
export interface PooledFigure {
  readonly name: FigureName;
  readonly value: number;
  /** How well the kettle's own figure is known, in its unit. */
  readonly standardError: number;
  /** How far one brew is off from it, standard deviation. */
  readonly scatter: number;
  /** Brews on this kettle that tell of it, and kettles and brews of the whole kind. */
  readonly brews: number;
  readonly kindKettles: number;
  readonly kindBrews: number;
  /** As it stands in a profile: its uncertainty is that of the next brew. */
  readonly figure: Figure<number>;
}

export interface PooledProfile {
  readonly figures: readonly PooledFigure[];
  /** A figure of which nobody of the kind tells anything stays as it was. */
  readonly equipment: Equipment;
  /** Figures that are off together; to stand in this equipment, or be handed to `intervals` and `calibrate` with it. */
  readonly correlations: readonly FigureCorrelation[];
}

/**
 * Makes a profile from what is known of a kind and, where it has any, of one kettle.
 *
 * @param a.typical - What is typical for its size, from which the figures are counted.
 * @param a.base - The profile that the figures go into.
 * @param a.own - What the kettle says itself; null for one that nobody has brewed on.
 * @returns Figures, the profile with them, and how they are tied.
 */
export function pooledProfile(a: {
  readonly places: readonly FigurePlace[];
  readonly typical: Equipment;
  readonly base: Equipment;
  readonly own: OwnInformation | null;
  readonly kind: Kind;
}): PooledProfile {
  const { places, typical, kind } = a;
  const centre = places.map(({ of }) => of(typical).value);
  // A figure that is certain on this kettle is not learned.
  const unit = places.map(({ of }) => of(typical).sd);
  const known = places.map(({ of }, k) => (unit[k] ?? 0) > 0 && of(a.base).sd > 0);
  const free = a.own === null ? newKettle(kind) : drawnToKind(a.own, kind);
  const found = withinBounds({ places, centre, unit: unit.map((sd) => (sd > 0 ? sd : 1)) }, free);
  const figures = places.map(({ name, of, range }, k): PooledFigure => {
    const before = of(a.base);
    const { kettles, brews: kindBrews } = kind.counts[k] ?? { kettles: 0, brews: 0 };
    const sd = unit[k] ?? 0;
    const counted = { brews: a.own?.brews[k] ?? 0, kindKettles: kettles, kindBrews };
    if (kettles === 0 || known[k] !== true) {
      const scatter = brewScatter(name, before.value);
      return { name, value: before.value, standardError: before.sd, scatter, ...counted, figure: before };
    }
    const value = Math.min(range.max, Math.max(range.min, (centre[k] ?? 0) + sd * (found.mean[k] ?? 0)));
    const standardError = sd * Math.sqrt(found.covariance[k * places.length + k] ?? 0);
    const scatter = brewScatter(name, value);
    const figure = { value, sd: Math.hypot(standardError, scatter), from: "learned", count: kindBrews } as const;
    return { name, value, standardError, scatter, ...counted, figure };
  });
  return {
    figures,
    equipment: places.reduce((made, { withFigure }, k) => {
      const figure = figures[k]?.figure;
      return figure === undefined ? made : withFigure(made, figure);
    }, a.base),
    correlations: correlationsOf({ places, unit }, found, figures),
  };
}

function newKettle({ mean, covariance, between }: Kind): Posterior {
  const size = between.length;
  return {
    mean,
    covariance: covariance.map((value, k) => value + (k % (size + 1) === 0 ? (between[k / (size + 1)] ?? 0) : 0)),
  };
}

/** Given the mean of the kind a kettle is drawn to it; what is not known of that mean is added, C + A V Aᵀ with A = C / τ². */
function drawnToKind(own: OwnInformation, kind: Kind): Posterior {
  const size = kind.between.length;
  const { mean, covariance } = drawnTo(own, kind.mean, kind.between);
  const share = covariance.map((value, k) => value / (kind.between[k % size] ?? 1));
  const carried = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (__, j) => product(kind.covariance, j, share.subarray(i * size, (i + 1) * size))),
  );
  return {
    mean,
    covariance: covariance.map((value, k) => {
      const [i, j] = [Math.floor(k / size), k % size];
      return value + product(share, j, carried[i] ?? []);
    }),
  };
}
