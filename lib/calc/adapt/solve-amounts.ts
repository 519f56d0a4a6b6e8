import { POUNDS_PER_GALLON } from "../colour";
import { srmFromEbc } from "../units";
import { celsius, ebc, grams, kilograms, type Litres } from "../units";
import { coolWort } from "../ledger/cooling";
import type { Ambient, Equipment } from "../ledger/equipment";
import { gristSums, type GristSums } from "../ledger/grist-sums";
import { heatToBoil } from "../ledger/heating";
import { hopResults, MOST_ALPHA_MG_PER_L, mostAlphaMgPerL } from "../ledger/hop-results";
import { kettleHeat } from "../ledger/kettle-heat";
import { densityAt20, leftInKettleL, massBalance, retainedL, type Masses } from "../ledger/mass-balance";
import { splitWater } from "../ledger/plan-water";
import type { Recipe } from "../ledger/recipe";
import { postBoilLitres } from "../ledger/volumes";
import { wortTarget, type WortTarget } from "../ledger/wort-target";
import { withTreatedWater } from "./treated-water";
import { GristSplit } from "./grist-split";
import type { Intention } from "./intention";

/** Efficiency and masses within one pass; three digits beyond what an adapted beer is held to. */
const CLOSE = 1e-10;
/** From pass to pass; the chiller's own solution carries noise below this. */
const SETTLED = 1e-9;
const MOST_PASSES = 40;

/** A passing guess beyond this is on its way to no answer. */
const MOST_GRAIN_KG = 1000;

/** Densities of wort are known up to here. */
const STRONGEST_PLATO = 35;

export type SolvedAmounts =
  | { readonly ok: true; readonly recipe: Recipe }
  | { readonly ok: false; readonly reason: "no-grist-reaches-the-strength" | "no-wort-takes-up-the-hops" };

/** Where the last evaluation came out, for the next one to start from. */
interface WarmStart {
  efficiency: number;
  /** kg/L of the wort that the grain keeps. */
  retainedDensity: number;
}

interface Task {
  readonly intention: Intention;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly intoFermenter: Litres;
  readonly topUp: Litres;
  /** The one row of the grist that the colour is held by; left out, all that colour. */
  readonly colourCarrier?: number | null;
}

/**
 * Finds the amounts that give the intention on this equipment, for a volume and a top-up that are given.
 *
 * Nothing is scaled. The grist follows from a root in the lauter efficiency, which the grist itself lowers; hops follow
 * from this kettle's own boil and cooling, and take wort with them, so grist and hops are passed over until they rest.
 *
 * @returns A recipe with amounts; or that no grist reaches the strength on this equipment.
 * @source Mass balance (docs/sources.md#mass-balance)
 */
export function solveAmounts(task: Task): SolvedAmounts {
  const split = new GristSplit(task.intention.fermentables, task.colourCarrier ?? null);
  const heat = kettleHeat(task.equipment, task.ambient);
  const boiledOffKg = (heat.boilOffKgPerH * task.intention.boil) / 60;
  let recipe = firstDraft(task);
  let heatingKg = 0;
  const warm: WarmStart = { efficiency: 0.85, retainedDensity: 1.02 };
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const found = solveGrist(task, split, recipe, boiledOffKg + heatingKg, warm);
    if (found === null) return { ok: false, reason: "no-grist-reaches-the-strength" };
    warm.efficiency = found.masses.lauterEfficiency;
    if (mostAlphaMgPerL(recipe, postBoilLitres(found.masses)) > MOST_ALPHA_MG_PER_L) {
      return { ok: false, reason: "no-wort-takes-up-the-hops" };
    }
    const next = withHops(task, found.recipe, found.masses, heat);
    if (next === null) return { ok: false, reason: "no-wort-takes-up-the-hops" };
    const evaporatedKg = heatingEvaporation(task, next, found.masses, found.sums);
    const settled = isClose(recipe, next) && Math.abs(evaporatedKg - heatingKg) < SETTLED * found.masses.runOffKg;
    recipe = next;
    heatingKg = evaporatedKg;
    if (settled) return { ok: true, recipe: withTreatedWater(task.intention, recipe, found.masses) };
  }
  return { ok: false, reason: "no-grist-reaches-the-strength" };
}

function firstDraft({ intention, intoFermenter, topUp }: Task): Recipe {
  const { originalExtract, colour, ...kept } = intention;
  return {
    ...kept,
    intoFermenter,
    topUp,
    fermentables: intention.fermentables.map(({ share, ...row }) => ({ ...row, kg: kilograms(0) })),
    hops: intention.hops.map(({ ibu, gramsPerLitre, ...hop }) => ({
      ...hop,
      grams: grams((gramsPerLitre ?? 1) * intoFermenter),
    })),
    water: { source: intention.water.source, salts: {}, acid: null },
  };
}

interface Grist {
  readonly recipe: Recipe;
  readonly sums: GristSums;
  readonly masses: Masses;
}

/** Root of η′(η) − η by secant: η fixes the grist, the grist fixes the efficiency η′ that it lauters with. */
function solveGrist(
  task: Task,
  split: GristSplit,
  recipe: Recipe,
  evaporatedKg: number,
  warm: WarmStart,
): Grist | null {
  const target = wortTarget({
    intoFermenter: task.intoFermenter,
    originalPlato: task.intention.originalExtract,
    topUp: task.topUp,
    leftL: leftInKettleL(gristSums(recipe, task.equipment), task.equipment),
  });
  if (100 * target.postBoilExtractKg > STRONGEST_PLATO * target.postBoilKg) return null;
  let eta = warm.efficiency;
  let previousEta = 0;
  let previousMiss = 0;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const grist = gristFor({ task, split, recipe, target, evaporatedKg, warm }, eta);
    if (grist === null) return null;
    const miss = grist.masses.lauterEfficiency - eta;
    if (Math.abs(miss) < CLOSE) return grist;
    const slope = previousEta === 0 ? -1 : (miss - previousMiss) / (eta - previousEta);
    previousEta = eta;
    previousMiss = miss;
    // At the answer the slope lies between −1 and 0; outside, no root is near and a damped step looks for one.
    const step = slope < -0.02 ? -miss / slope : miss;
    eta = Math.min(1, Math.max(eta / 2, eta + step));
    if (eta < 0.02) return null;
  }
  return null;
}

interface GristTask {
  readonly task: Task;
  readonly split: GristSplit;
  readonly recipe: Recipe;
  readonly target: WortTarget;
  readonly evaporatedKg: number;
  readonly warm: WarmStart;
}

function gristFor({ task, split, recipe, target, evaporatedKg, warm }: GristTask, eta: number): Grist | null {
  const { equipment } = task;
  const mashYield = eta * equipment.lauter.conversion.value;
  const kgs = split.masses(target.postBoilExtractKg, mashYield, colourWanted(task, target));
  if (kgs.some((kg) => kg > MOST_GRAIN_KG)) return null;
  const fermentables = recipe.fermentables.map((row, i) => ({ ...row, kg: kilograms(kgs[i] ?? 0) }));
  const tried = { ...recipe, fermentables };
  const sums = gristSums(tried, equipment);
  const runOffKg = target.postBoilKg + evaporatedKg - sums.addedKg;
  const keptL = retainedL(tried, sums, equipment);
  let retainedKg = warm.retainedDensity * keptL;
  for (let pass = 0; pass < MOST_PASSES; pass++) {
    const hotKg = runOffKg + retainedKg - sums.maltWaterKg - sums.dissolvedKg;
    if (hotKg <= 0) return null;
    const waters = splitWater(tried, equipment, sums, hotKg);
    const masses = massBalance({ recipe: tried, equipment, sums, ...waters, evaporatedKg });
    if ("wortLitres" in masses) return null;
    const isClose = Math.abs(masses.retainedKg - retainedKg) <= CLOSE * hotKg;
    retainedKg = masses.retainedKg;
    if (keptL > 0) warm.retainedDensity = retainedKg / keptL;
    if (isClose) return { recipe: tried, sums, masses };
  }
  return null;
}

/** kg·°L that give the wanted colour in the kettle, by the relation of Morey turned round. */
function colourWanted({ intention, topUp, intoFermenter }: Task, target: WortTarget): number {
  const plato = (100 * target.postBoilExtractKg) / target.postBoilKg;
  const litresAt20 = target.postBoilKg / densityAt20(plato);
  const mcu = (srmFromEbc(ebc(intention.colour)) / 1.4922) ** (1 / 0.6859);
  return ((mcu / POUNDS_PER_GALLON) * litresAt20) / (1 - topUp / intoFermenter);
}

/** Weighs the hops for the bitterness wanted of each; null where no amount that could be weighed gives it. */
function withHops(task: Task, recipe: Recipe, masses: Masses, heat: ReturnType<typeof kettleHeat>): Recipe | null {
  const { intention, equipment, ambient } = task;
  const cooling = coolWort({ recipe, equipment, ambient, masses, heat });
  const results = hopResults({
    recipe,
    masses,
    cooling,
    boilC: celsius(heat.boilC),
    postBoilL: postBoilLitres(masses),
    boiledShare: 1 - task.topUp / task.intoFermenter,
  });
  const weights = recipe.hops.map((hop, i) => {
    const wanted = intention.hops[i]?.ibu ?? null;
    const given = results[i]?.ibu ?? 0;
    return wanted === null || given === 0 ? hop.grams : (hop.grams * wanted) / given;
  });
  if (weights.some((weight) => weight > grams.range.max)) return null;
  return { ...recipe, hops: recipe.hops.map((hop, i) => ({ ...hop, grams: grams(weights[i] ?? 0) })) };
}

function heatingEvaporation(task: Task, recipe: Recipe, masses: Masses, sums: GristSums): number {
  const { equipment, ambient } = task;
  if (equipment.kettle.lid) return 0;
  const fromC = recipe.mash.at(-1)?.celsius ?? ambient.tapWater;
  const heating = heatToBoil({ equipment, ambient, sums, masses, heat: kettleHeat(equipment, ambient) }, fromC);
  return heating.ok ? heating.evaporatedKg : 0;
}

function isClose(before: Recipe, after: Recipe): boolean {
  return (
    after.hops.every((hop, i) => Math.abs(hop.grams - (before.hops[i]?.grams ?? 0)) <= SETTLED * hop.grams) &&
    after.fermentables.every((row, i) => Math.abs(row.kg - (before.fermentables[i]?.kg ?? 0)) <= SETTLED * row.kg)
  );
}
