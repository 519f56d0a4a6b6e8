import type { Intention } from "@/lib/calc/adapt";
import { brew, type Ambient, type Equipment, type Ledger, type Recipe } from "@/lib/calc/ledger";
import { ebc, fraction, grams, gramsPerLitre, kilograms, litres, millilitres, ph } from "@/lib/calc/units";
import type { Ions } from "@/lib/calc/water";
import type { WrittenIntention } from "./recipe-intention";
import type { SharedBrewRules } from "./shared-brew-rules";

/** A recipe, with the lots of its brewer in its rows, on the kettle that it shall be brewed on. */
export interface HeldTask {
  readonly recipe: Recipe;
  readonly written: WrittenIntention;
  readonly rules: SharedBrewRules;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  /** What goes into the fermenter here, L. */
  readonly intoFermenter: number;
  /** The brewer's own water; null takes that of the recipe. */
  readonly water: Ions | null;
}

/**
 * The intention of a recipe under the rules of a shared brew, all but the acid. What the rules do not hold is replaced
 * by what this kettle makes of the amounts as written, taken by the litre; adapting it then gives those amounts back.
 */
export function heldIntention(task: HeldTask): Intention {
  const { written, rules, recipe } = task;
  const { intention } = written;
  const byDose = intention.hops.map((hop, i) => ({
    ...hop,
    ibu: null,
    gramsPerLitre: gramsPerLitre((recipe.hops[i]?.grams ?? 0) / recipe.intoFermenter),
  }));
  return {
    ...intention,
    ...looseGrist(task),
    hops: rules.bitterness ? intention.hops : byDose,
    water: heldWater(task),
  };
}

type GristTargets = Pick<Intention, "originalExtract" | "colour" | "fermentables">;

function looseGrist(task: HeldTask): GristTargets {
  const { rules, written } = task;
  const { originalExtract, colour, fermentables } = written.intention;
  const asWritten: GristTargets = { originalExtract, colour, fermentables };
  if (rules.originalExtract && rules.colour) return asWritten;
  const ledger = rules.originalExtract ? atStrength(task, originalExtract) : ledgerOf(task, 1);
  // Amounts that this kettle cannot run off at all leave the targets as they are; the misfit is told then.
  if (ledger === null) return asWritten;
  return {
    originalExtract: rules.originalExtract
      ? originalExtract
      : (ledger.quantities["fermenter.originalExtract"] ?? originalExtract),
    colour: rules.colour ? colour : ebc(ledger.quantities["fermenter.colour"] ?? colour),
    fermentables: rules.originalExtract
      ? fermentables
      : fermentables.map((row, i) => ({ ...row, share: fraction(Math.min(1, ledger.fermentables[i]?.share ?? 0)) })),
  };
}

const MOST_PASSES = 20;
const CLOSE = 1e-9;

/** The grist as written, all of it more or less until the strength is reached here. */
function atStrength(task: HeldTask, plato: number): Ledger | null {
  let factor = 1;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const ledger = ledgerOf(task, factor);
    const reached = ledger?.quantities["fermenter.originalExtract"] ?? null;
    if (ledger === null || reached === null || reached <= 0) return null;
    if (Math.abs(reached / plato - 1) < CLOSE) return ledger;
    // Extract is nearly in proportion to the grist, so this closes in by a factor of ten or more each time.
    factor *= plato / reached;
  }
  return null;
}

/** What the kettle makes of the amounts as written, by the litre, with `factor` times the grist. */
function ledgerOf({ recipe, equipment, ambient, intoFermenter }: HeldTask, factor: number): Ledger | null {
  const scale = intoFermenter / recipe.intoFermenter;
  const kgs = recipe.fermentables.map(({ kg }) => kg * scale * factor);
  const weights = recipe.hops.map((hop) => hop.grams * scale);
  if (kgs.some((kg) => kg > kilograms.range.max) || weights.some((weight) => weight > grams.range.max)) return null;
  const outcome = brew({
    recipe: {
      ...recipe,
      intoFermenter: litres(intoFermenter),
      topUp: litres(0),
      fermentables: recipe.fermentables.map((row, i) => ({ ...row, kg: kilograms(kgs[i] ?? 0) })),
      hops: recipe.hops.map((hop, i) => ({ ...hop, grams: grams(weights[i] ?? 0) })),
      // Neither salts nor acid change strength or colour.
      water: { source: recipe.water.source, salts: {}, acid: null },
    },
    equipment,
    ambient,
  });
  return outcome.ok ? outcome.ledger : null;
}

function heldWater({ written, rules, water }: HeldTask): Intention["water"] {
  const wanted = written.intention.water;
  if (rules.water === "as written") return wanted;
  if (rules.water === "same treated water") {
    return water === null ? wanted : { ...wanted, source: water, saltsMgPerLitre: null };
  }
  const source = water ?? wanted.source;
  return { ...wanted, source, ions: source, saltsMgPerLitre: {} };
}

/**
 * The intention with the acid as written, by the litre of mash water, said as the pH that it gives here: for a plan
 * that does not hold the pH. `solved` is the recipe adapted without acid, and `ledger` its ledger.
 */
export function withLooseAcid(
  task: HeldTask,
  intention: Intention,
  { recipe: solved, ledger }: { readonly recipe: Recipe; readonly ledger: Ledger },
): Intention {
  const { acid } = task.recipe.water;
  const there = task.written.ledger.quantities["water.mash"] ?? 0;
  const here = ledger.quantities["water.mash"] ?? 0;
  if (acid === null || there === 0) return intention;
  const ml = millilitres((acid.ml * here) / there);
  const recipe = { ...solved, water: { ...solved.water, acid: { solution: acid.solution, ml } } };
  const outcome = brew({ recipe, equipment: task.equipment, ambient: task.ambient });
  const reached = outcome.ok ? outcome.ledger.quantities["mash.ph"] : null;
  if (reached === null) return intention;
  return { ...intention, water: { ...intention.water, acid: { solution: acid.solution, mashPh: ph(reached) } } };
}
