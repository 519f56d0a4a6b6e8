import { equivalentBoilMinutes, isomerisationRates, tinsethUtilisation } from "../bitterness";
import { platoToSpecificGravity } from "../gravity";
import { celsius, degreesPlato, ibu, minutes, specificGravity } from "../units";
import type { Cooling, Curve } from "./cooling";
import type { HopResult } from "./ledger";
import type { Masses } from "./mass-balance";
import type { HopAddition, Recipe } from "./recipe";

/** As far as the utilisation goes; its time term has come within 0.007 % of its end by then. */
const LONGEST_COUNTED_MIN = 240;

const NO_BITTERNESS: HopResult = { ibu: 0, equivalentMinutes: 0, utilisation: 0 };

/**
 * Finds what each hop addition gives through this kettle's own boil, stand and chilling.
 *
 * Every minute counts by how fast alpha acids isomerise at its temperature against 100 °C; the equivalent minutes go
 * into the utilisation that was fitted for the boil. So a boil at altitude gives less, and a slow chill more.
 *
 * @returns Bitterness in the beer, mg/L, equivalent minutes and utilisation for each row of the recipe.
 * @source docs/sources.md#tinseth-1997, docs/sources.md#malowicki-shellhammer-2005
 */
export function hopResults(a: {
  readonly recipe: Recipe;
  readonly masses: Masses;
  readonly cooling: Cooling;
  readonly boilC: number;
  readonly postBoilL: number;
  /** Share of the fermenter's volume that is boiled wort, not water added later. */
  readonly boiledShare: number;
}): HopResult[] {
  const { recipe, cooling } = a;
  const chillMinutes = equivalentOf(cooling.chill);
  const standMinutes = equivalentOf(cooling.stand);
  const afterFlameOut = equivalentOf(cooling.toStand) + standMinutes + chillMinutes;
  const boilRate = isomerisationRates(celsius(a.boilC)).k1 / isomerisationRates(celsius(100)).k1;
  const sg = meanBoilGravity(a.masses);
  return recipe.hops.map((hop) => {
    if (hop.use === "dry" || hop.grams === 0) return NO_BITTERNESS;
    const equivalentMinutes =
      hop.use === "boil"
        ? Math.min(hop.minutes, recipe.boil) * boilRate + afterFlameOut
        : standPart(hop, recipe, cooling.stand, standMinutes, afterFlameOut) + chillMinutes;
    const counted = minutes(Math.min(LONGEST_COUNTED_MIN, equivalentMinutes));
    const utilisation = tinsethUtilisation({ sg, minutes: counted });
    // Tinseth's bitterness is the alpha acids added times what is used of them.
    const boiledIbu = utilisation * alphaMgPerL(hop, a.postBoilL);
    return { ibu: boiledIbu * a.boiledShare, equivalentMinutes, utilisation };
  });
}

/** More in one addition than a litre of wort takes up, and as far as the utilisation is computed. */
export const MOST_ALPHA_MG_PER_L = ibu.range.max;

/**
 * Finds the addition that brings the most alpha acids into a litre of wort.
 *
 * @returns Concentration before anything isomerises, mg/L; 0 without hops of the hot side.
 * @source Definition (docs/sources.md#mass-balance)
 */
export function mostAlphaMgPerL(recipe: Recipe, postBoilL: number): number {
  let most = 0;
  for (const hop of recipe.hops) {
    if (hop.use !== "dry") most = Math.max(most, alphaMgPerL(hop, postBoilL));
  }
  return most;
}

const alphaMgPerL = (hop: HopAddition, litres: number): number => (1000 * hop.grams * hop.alpha) / litres;

/** The part of the stand that a stand addition sees; without a stand it goes in at flame-out. */
function standPart(
  hop: HopAddition,
  recipe: Recipe,
  stand: Curve,
  standMinutes: number,
  afterFlameOut: number,
): number {
  if (recipe.stand === null) return afterFlameOut;
  if (hop.minutes >= recipe.stand.minutes) return standMinutes;
  return equivalentOf(lastMinutes(stand, hop.minutes));
}

/** The end of a curve, cut inside a piece if need be. */
function lastMinutes(curve: Curve, length: number): Curve {
  const end = curve.at(-1)?.[0] ?? 0;
  const start = end - length;
  const kept: (readonly [number, number])[] = [];
  for (let i = 0; i < curve.length; i++) {
    const point = curve[i];
    const next = curve[i + 1];
    if (point === undefined) continue;
    if (point[0] >= start) kept.push(point);
    else if (next !== undefined && next[0] > start) {
      const share = (start - point[0]) / (next[0] - point[0]);
      kept.push([start, point[1] + share * (next[1] - point[1])]);
    }
  }
  return kept;
}

const equivalentOf = (curve: Curve): number => (curve.length < 2 ? 0 : equivalentBoilMinutes({ curve }));

function meanBoilGravity(masses: Masses): ReturnType<typeof specificGravity> {
  const before = (100 * masses.runOffExtractKg) / masses.runOffKg;
  const after = (100 * masses.postBoilExtractKg) / masses.postBoilKg;
  const sg = (plato: number): number => platoToSpecificGravity(degreesPlato(plato));
  return specificGravity((sg(before) + sg(after)) / 2);
}
