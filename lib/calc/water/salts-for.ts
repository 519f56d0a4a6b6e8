import { requireInRange } from "../errors";
import {
  fraction,
  grams as gramsOf,
  gramsPerLitre,
  type Fraction,
  type Grams,
  type GramsPerLitre,
  type Litres,
} from "../units";
import { boundedLeastSquares } from "./bounded-least-squares";
import { dilutionFor } from "./dilution-for";
import { IONS, mapIons, type Ion, type Ions } from "./ions";
import { TREATED_WATER_RANGE, ionsFromSalts } from "./ions-from-salts";
import { MOLAR_MASS, VALENCE } from "./molar-mass";
import { SALTS, SALT_CHEMISTRY, type Salt, type SaltGrams } from "./salts";

/** A water to be made from another. */
export interface WaterWish {
  readonly source: Ions;
  readonly target: Ions;
  readonly litres: Litres;
  /** Salts at hand; all but chalk, which hardly dissolves, when left out. */
  readonly allowed?: readonly Salt[];
  /** The most of each salt, where it differs from `MOST_OF_SALT`. */
  readonly most?: Readonly<Partial<Record<Salt, GramsPerLitre>>>;
  /** The largest share of demineralised water that may stand in for the source; 0 for none. */
  readonly mostDemineralised: Fraction;
}

/** What comes nearest to the target. */
export interface MixedWater {
  /** Every salt allowed, those not needed at 0. */
  readonly grams: SaltGrams;
  readonly demineralised: Fraction;
  readonly ions: Ions;
  /** Reached less wanted, mg/L, may be negative. */
  readonly residual: Readonly<Record<Ion, number>>;
  /** The ion that is furthest off by charge. */
  readonly furthest: Ion;
}

export type SaltsFor =
  ({ readonly ok: true } & MixedWater) | ({ readonly ok: false; readonly reason: "target-not-met" } & MixedWater);

/** A target counts as met when every ion is this near, mg/L: laboratories tell no less apart. */
const MET_WITHIN = 1;

/**
 * The most of each salt, g/L: gypsum and slaked lime by what cold water dissolves, chalk by what a mash makes use of
 * (docs/sources.md#troester-2009), the others by taste, common practice.
 */
export const MOST_OF_SALT = {
  gypsum: gramsPerLitre(2.4),
  calciumChlorideDihydrate: gramsPerLitre(1.5),
  epsomSalt: gramsPerLitre(1),
  tableSalt: gramsPerLitre(1),
  bakingSoda: gramsPerLitre(1),
  chalk: gramsPerLitre(0.4),
  slakedLime: gramsPerLitre(1.6),
} as const satisfies Readonly<Record<Salt, GramsPerLitre>>;

const USUAL_SALTS: readonly Salt[] = SALTS.filter((salt) => salt !== "chalk");

/**
 * Finds the salts, and the demineralised water, that bring a water nearest to a target.
 *
 * Least squares of the charges, mEq/L, so that an ion counts by its reactions and not by its weight; no salt is ever
 * negative or above its limit. Demineralised water comes in only where salts alone do not do, and then the least that
 * brings every ion under the target; more only where that meets it.
 *
 * @returns Grams, the water they make and how far it is from the target ion by ion; not ok when an ion is off by over 1 mg/L.
 * @validRange 0.001 to 100 000 L, 0 to 10 000 mg/L of each ion.
 * @throws {@link OutOfRangeError} when a volume, a share, a limit or an ion is outside its range.
 * @source Bounded least squares, Lawson and Hanson 1974 (docs/sources.md#lawson-hanson-1974)
 * @example
 * saltsFor({ source, target, litres: litres(20), mostDemineralised: fraction(0) }); // { ok: true, grams: { gypsum: 4, … }, … }
 */
export function saltsFor(wish: WaterWish): SaltsFor {
  requireInRange("water", wish.litres, TREATED_WATER_RANGE);
  const mostDemineralised = requireInRange("demineralised water", wish.mostDemineralised, fraction.range);
  const salts = wish.allowed ?? USUAL_SALTS;
  const { demineralised } = dilutionFor(wish);
  const plain = mixWith(wish, salts, 0, 0);
  if (plain.ok || mostDemineralised === 0) return plain;
  const least = Math.min(demineralised, mostDemineralised);
  const thinned = mixWith(wish, salts, least, 0);
  if (thinned.ok) return thinned;
  const free = mixWith(wish, salts, 0, mostDemineralised);
  return free.ok ? free : thinned;
}

// The best salts for a water that is `thinned` already and of which up to `thinnedMost` more may give way.
function mixWith(wish: WaterWish, salts: readonly Salt[], thinned: number, thinnedMost: number): SaltsFor {
  const start = mapIons((ion) => wish.source[ion] * (1 - thinned));
  const solved = boundedLeastSquares({
    columns: [...salts.map(chargesOf), IONS.map((ion) => -toMeq(ion, start[ion]))],
    target: IONS.map((ion) => toMeq(ion, wish.target[ion] - start[ion])),
    upper: [...salts.map((salt) => limitOf(wish, salt)), thinnedMost],
  });
  const demineralised = thinned + (solved[salts.length] ?? 0);
  const grams: Partial<Record<Salt, Grams>> = {};
  salts.forEach((salt, i) => (grams[salt] = gramsOf((solved[i] ?? 0) * wish.litres)));
  const added = ionsFromSalts({ litres: wish.litres, grams });
  const ions = mapIons((ion) => wish.source[ion] * (1 - demineralised) + added[ion]);
  return judged(wish.target, { grams, demineralised: fraction(demineralised), ions });
}

function judged(target: Ions, mixed: Pick<MixedWater, "grams" | "demineralised" | "ions">): SaltsFor {
  const residual = mapResidual((ion) => mixed.ions[ion] - target[ion]);
  const off = (ion: Ion): number => Math.abs(toMeq(ion, residual[ion]));
  const furthest = IONS.reduce((worst, ion) => (off(ion) > off(worst) ? ion : worst));
  const met = IONS.every((ion) => Math.abs(residual[ion]) <= MET_WITHIN);
  return met
    ? { ok: true, ...mixed, residual, furthest }
    : { ok: false, reason: "target-not-met", ...mixed, residual, furthest };
}

function mapResidual(of: (ion: Ion) => number): Readonly<Record<Ion, number>> {
  return {
    calcium: of("calcium"),
    magnesium: of("magnesium"),
    sodium: of("sodium"),
    sulfate: of("sulfate"),
    chloride: of("chloride"),
    bicarbonate: of("bicarbonate"),
  };
}

function limitOf({ most }: WaterWish, salt: Salt): number {
  return requireInRange(`most ${salt}`, most?.[salt] ?? MOST_OF_SALT[salt], gramsPerLitre.range);
}

// mEq/L of each ion from a gram in a litre.
function chargesOf(salt: Salt): readonly number[] {
  const { molarMass, gives } = SALT_CHEMISTRY[salt];
  return IONS.map((ion) => (1000 * (gives[ion] ?? 0) * VALENCE[ion]) / molarMass);
}

function toMeq(ion: Ion, mgL: number): number {
  return (mgL * VALENCE[ion]) / MOLAR_MASS[ion];
}
