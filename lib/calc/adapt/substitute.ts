import { OutOfRangeError, requireInRange } from "../errors";
import { brew, type Limit } from "../ledger";
import { FERMENTABLE_NUMBERS, HOP_NUMBERS, ACIDITY_NUMBERS, type Numbers } from "../ledger/recipe-numbers";
import { requireNumbers } from "../ledger/require-brew";
import { changedQuantities } from "./changed-quantities";
import { solveAmounts } from "./solve-amounts";
import { placeFermentable, unlikeFermentable, type Placed } from "./substitute-fermentable";
import { placeHop, unlikeHop } from "./substitute-hop";
import type {
  FermentableStock,
  HopStock,
  Lacking,
  Original,
  Substitute,
  SubstituteInput,
  SubstituteOutcome,
  Unfit,
  UnfitReason,
  Unlikeness,
} from "./substitution";

/**
 * Finds what can stand in for a malt or a hop that a member lacks, each with every amount solved anew.
 *
 * Original extract, the colour of the beer and the bitterness of each addition are kept as near as the candidate lets
 * them; then the candidates are ranked by how unlike the row they are in yield, colour, mash pH, attenuation or alpha
 * acids. Flavour and aroma are outside this arithmetic: a brewer has to judge them.
 *
 * @param a.recipe - The recipe as it should be brewed.
 * @param a.lacking - The row that is lacking, and what is on the shelf.
 * @returns Substitutes, the nearest first, each with recipe, ledger and the numbers that change, and what does not fit with
 * the reason; or that nothing fits.
 * @validRange Any recipe that brews; the weights of the ranking are a decision (docs/decisions/0013-substitutes.md).
 * @throws {@link OutOfRangeError} when a number of the recipe or a candidate is outside its range, or there is no such row.
 * @source Mass balance (docs/sources.md#mass-balance); bitterness, colour and pH as in the ledger
 * @example
 * const lacking = { list: "hops", index: 0, candidates: [{ name: "Perle", alpha: fraction(0.065) }] } as const;
 * substitute({ recipe, equipment, ambient, lacking }); // { ok: true, substitutes: [{ recipe: { … twice the grams … } }] }
 */
export function substitute(a: SubstituteInput): SubstituteOutcome {
  const outcome = brew(a);
  requireLacking(a);
  if (!outcome.ok) return { ok: false, reason: "recipe-gives-no-wort", unfit: [] };
  const original: Original = { ...a, ledger: outcome.ledger };
  if (givesNothing(original, a.lacking)) return { ok: false, reason: "row-gives-nothing", unfit: [] };
  if (a.lacking.candidates.length === 0) return { ok: false, reason: "no-candidates", unfit: [] };
  const tried = tryAll(original, a.lacking);
  const substitutes = tried.filter((each) => "ledger" in each).sort((one, other) => one.distance - other.distance);
  const unfit = tried.filter((each) => "reason" in each);
  return substitutes.length === 0 ? { ok: false, reason: "nothing-fits", unfit } : { ok: true, substitutes, unfit };
}

function requireLacking({ recipe, lacking }: SubstituteInput): void {
  const { list, index } = lacking;
  const range = { unit: "", min: 0, max: recipe[list].length - 1 };
  requireInRange("row", index, range);
  if (!Number.isInteger(index)) throw new OutOfRangeError("row", index, range);
  if (lacking.list === "hops") {
    for (const { alpha } of lacking.candidates) requireNumbers({ alpha }, ALPHA);
    return;
  }
  for (const candidate of lacking.candidates) {
    requireNumbers(candidate, STOCK);
    if (candidate.acidity !== null) requireNumbers(candidate.acidity, ACIDITY_NUMBERS);
  }
}

// The same numbers as in a recipe, without those that only a row of one has.
const STOCK = FERMENTABLE_NUMBERS.filter(([field]) => field !== "kg") as Numbers<FermentableStock>;
const ALPHA = HOP_NUMBERS.filter(([field]) => field === "alpha") as Numbers<Pick<HopStock, "alpha">>;

function givesNothing({ recipe, ledger }: Original, { list, index }: Lacking): boolean {
  if (list === "hops") return recipe.hops[index]?.grams === 0;
  return ledger.fermentables[index]?.extractKg === 0;
}

type Tried = Substitute | Unfit;

function tryAll(original: Original, lacking: Lacking): readonly Tried[] {
  const { index } = lacking;
  if (lacking.list === "hops") {
    return lacking.candidates.map((stock, candidate) => {
      const intention = placeHop(original, index, stock);
      return tryOne(original, {
        who: { name: stock.name, candidate },
        placed: typeof intention === "string" ? intention : { intention, colourCarrier: null },
        // Hops bring no extract, but so much of a weak one may be asked for that it keeps all the wort.
        unsolved: "bitterness-out-of-reach",
        unlikeOf: () => unlikeHop(original, index, stock),
      });
    });
  }
  return lacking.candidates.map((stock, candidate) =>
    tryOne(original, {
      who: { name: stock.name, candidate },
      placed: placeFermentable(original, index, stock),
      unsolved: "strength-out-of-reach",
      unlikeOf: (after) => unlikeFermentable(original, index, stock, after),
    }),
  );
}

interface Trial {
  readonly who: Pick<Substitute, "name" | "candidate">;
  readonly placed: Placed | UnfitReason;
  /** Why there are no amounts, where there are none. */
  readonly unsolved: UnfitReason;
  readonly unlikeOf: (after: Pick<Original, "recipe" | "ledger">) => Unlikeness | UnfitReason;
}

function tryOne(original: Original, { who, placed, unsolved, unlikeOf }: Trial): Tried {
  const unfit = (reason: UnfitReason, limits: readonly Limit[] = []): Unfit => ({ ...who, reason, limits });
  if (typeof placed === "string") return unfit(placed);
  const { equipment, ambient } = original;
  const { intoFermenter, topUp } = original.recipe;
  const solved = solveAmounts({ ...placed, equipment, ambient, intoFermenter, topUp });
  if (!solved.ok) return unfit(unsolved);
  const { recipe } = solved;
  const outcome = brew({ recipe, equipment, ambient });
  if (!outcome.ok) return unfit(outcome.reason === "too-dark" ? "colour-out-of-reach" : unsolved);
  const { ledger } = outcome;
  const unlike = unlikeOf({ recipe, ledger });
  if (typeof unlike === "string") return unfit(unlike);
  const limits = newlyBroken(original.ledger.limits, ledger.limits);
  if (limits.length > 0) return unfit("breaks-a-limit", limits);
  return {
    ...who,
    distance: distanceOf(unlike),
    unlike,
    recipe,
    ledger,
    changes: changedQuantities(original.ledger, ledger),
  };
}

const distanceOf = (unlike: Unlikeness): number =>
  unlike.extract + unlike.colour + unlike.beerColour + unlike.mashPh + unlike.attenuation + unlike.alpha;

/** A limit that the recipe breaks already is no fault of the candidate. */
function newlyBroken(before: readonly Limit[], after: readonly Limit[]): readonly Limit[] {
  const kept = new Set(before.filter((limit) => limit.ok).map((limit) => limit.id));
  return after.filter((limit) => !limit.ok && kept.has(limit.id));
}
