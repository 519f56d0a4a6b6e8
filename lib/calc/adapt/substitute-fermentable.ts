import { brew, type Fermentable, type Ledger } from "../ledger";
import { rowLovibond } from "../ledger/grist-sums";
import { gristExtract } from "../mash";
import { fraction, kilograms } from "../units";
import { colouringRows } from "./grist-split";
import type { IntendedFermentable, Intention } from "./intention";
import { intentionOf } from "./intention-of";
import type { FermentableStock, Original, UnfitReason, Unlikeness } from "./substitution";

/** What counts as how far, for the ranking: docs/decisions/0013-substitutes.md. */
const WEIGHT = { extract: 1, colour: 1, beerColour: 1, mashPh: 2, attenuation: 4 } as const;

/** A beer this many times darker or paler is another beer. */
const COLOUR_REACH = 1.5;

/** One of each is added to colours before they are divided, so that white sugar and pale beer have a place. */
const ONE = 1;

/** As much of the pale malts may be given up to make room. */
const PALE_TO_GIVE = 0.95;

/** A grist with a candidate in the place of a row. */
export interface Placed {
  readonly intention: Intention;
  readonly colourCarrier: number | null;
}

const potentialOf = (row: Pick<Fermentable, "extract" | "moisture">): number =>
  gristExtract({ extract: row.extract, moisture: row.moisture, kg: kilograms(1) });

const ratio = (of: number, to: number): number => Math.abs(Math.log(of / to));

/**
 * Puts a candidate in the place of a fermentable, for the part that the row has in this recipe.
 *
 * A row that is there for its colour is replaced by as much as keeps the colour, and the pale malts make up the extract;
 * any other row is replaced by as much as brings its extract, and the dark malts hold the colour.
 *
 * @returns The intention; or why the candidate cannot have the part.
 */
export function placeFermentable(original: Original, index: number, candidate: FermentableStock): Placed | UnfitReason {
  const intention = intentionOf(original);
  const row = intention.fermentables[index];
  if (row === undefined || potentialOf(candidate) === 0) return "no-extract";
  const dark = colouringRows(intention.fermentables);
  const pale = (each: IntendedFermentable, i: number): boolean =>
    each.station === "mash" && dark[i] !== true && i !== index;
  const paleShare = intention.fermentables.reduce((sum, each, i) => (pale(each, i) ? sum + each.share : sum), 0);
  if (dark[index] !== true || paleShare === 0) {
    return { intention: withRow(intention, index, { ...candidate, share: row.share }), colourCarrier: null };
  }
  const share = row.share * shareForColour(original, row, candidate);
  const given = share - row.share;
  if (!(given <= PALE_TO_GIVE * paleShare)) return "colour-out-of-reach";
  const fermentables = intention.fermentables.map((each, i) =>
    pale(each, i) ? { ...each, share: fraction(each.share * (1 - given / paleShare)) } : each,
  );
  const placed = withRow({ ...intention, fermentables }, index, { ...candidate, share: fraction(share) });
  return { intention: placed, colourCarrier: index };
}

/** Extract of the candidate over that of the row where both give the same colour. */
function shareForColour({ equipment, ledger }: Original, row: FermentableStock, candidate: FermentableStock): number {
  const mashYield = equipment.lauter.conversion.value * (ledger.quantities["lauter.efficiency"] ?? 1);
  const extractPerColour = (of: FermentableStock): number =>
    (potentialOf(of) * (of.station === "mash" ? mashYield : 1)) / rowLovibond(of.colour);
  return extractPerColour(candidate) / extractPerColour(row);
}

function withRow(intention: Intention, index: number, row: IntendedFermentable): Intention {
  return { ...intention, fermentables: intention.fermentables.map((each, i) => (i === index ? row : each)) };
}

/**
 * Tells how unlike a row its candidate is in this recipe: yield and colour count by the row's part in the beer.
 *
 * @param after - The solved recipe with the candidate, and its ledger.
 * @returns The weighed differences; or that the colour of the beer is not to be had with it.
 */
export function unlikeFermentable(
  original: Original,
  index: number,
  candidate: FermentableStock,
  after: Pick<Original, "recipe" | "ledger">,
): Unlikeness | UnfitReason {
  const row = original.recipe.fermentables[index];
  const part = original.ledger.fermentables[index];
  if (row === undefined || part === undefined) return "no-extract";
  const difference = (id: "fermenter.attenuation"): number =>
    Math.abs((after.ledger.quantities[id] ?? 0) - (original.ledger.quantities[id] ?? 0));
  const beerColour = ratio(beerEbc(after.ledger) + ONE, beerEbc(original.ledger) + ONE);
  if (beerColour > Math.log(COLOUR_REACH)) return "colour-out-of-reach";
  return {
    extract: WEIGHT.extract * part.share * ratio(potentialOf(candidate), potentialOf(row)),
    colour:
      WEIGHT.colour * part.colourShare * ratio(rowLovibond(candidate.colour) + ONE, rowLovibond(row.colour) + ONE),
    beerColour: WEIGHT.beerColour * beerColour,
    mashPh: WEIGHT.mashPh * mashPhDifference(original, after),
    attenuation: WEIGHT.attenuation * difference("fermenter.attenuation"),
    alpha: 0,
  };
}

const beerEbc = ({ quantities }: Ledger): number => quantities["fermenter.colour"] ?? 0;

/** Acid is solved for the same pH, so it is taken as it was in the recipe; else every malt would count as equal. */
function mashPhDifference(original: Original, after: Pick<Original, "recipe" | "ledger">): number {
  const { acid } = original.recipe.water;
  const before = original.ledger.quantities["mash.ph"];
  const same = { ...after.recipe, water: { ...after.recipe.water, acid } };
  const outcome = acid === null ? null : brew({ ...original, recipe: same });
  const ledger = outcome?.ok === true ? outcome.ledger : after.ledger;
  const ph = ledger.quantities["mash.ph"];
  return before === null || ph === null ? 0 : Math.abs(ph - before);
}
