import { moreySrm } from "../colour";
import { requireInRange } from "../errors";
import { ebcFromSrm, kilograms, srm } from "../units";
import { colourUnitsOf } from "./colour-units";
import { afterBoil } from "./after-boil";
import { balancesOf } from "./balances";
import type { BrewState } from "./brew-state";
import { planDay } from "./day-plan";
import type { Ambient, Equipment } from "./equipment";
import { brewingWater } from "./brewing-water";
import { fermentableResults } from "./fermentable-results";
import { gristSums, type GristSums } from "./grist-sums";
import { heatToBoil } from "./heating";
import { hopResults, MOST_ALPHA_MG_PER_L, mostAlphaMgPerL } from "./hop-results";
import { kettleHeat, type KettleHeat } from "./kettle-heat";
import type { Ledger, LedgerOutcome, Phase } from "./ledger";
import { limitsOf } from "./limits";
import { massBalance, waterL, type Masses } from "./mass-balance";
import { planWater, type PlannedWater } from "./plan-water";
import { quantitiesOf } from "./quantities-of";
import type { Recipe } from "./recipe";
import { mashedMalt } from "./mashed-malt";
import { requireBrew } from "./require-brew";
import { postBoilLitres } from "./volumes";

const STRONGEST_PLATO = 35;
/** Less than this in a vessel is rounding, not wort. */
const LEAST_WORT_KG = 0.001;
/** Beyond any mash that could be stirred, and as far as the first wort is computed. */
const STRONGEST_FIRST_WORT_PLATO = 60;
/** As far as the relation of Morey goes; beyond any beer. */
const DARKEST_COLOUR_UNITS = 1000;
const MOST_EVAPORATION_PASSES = 30;

/**
 * Computes the whole ledger of one recipe on one kettle: every mass, volume, strength, time and energy from the water
 * to the package.
 *
 * Efficiency is a result: it follows from grist, absorption, sparge and losses. The water is found so that the
 * fermenter receives the wanted volume.
 *
 * @param a.recipe - Amounts for this kettle.
 * @param a.equipment - The kettle with its figures.
 * @param a.ambient - Air, tap water and grain on the day.
 * @returns The ledger, balanced to 1e-9 at every station; or why no wort comes of it.
 * @validRange Worts up to 35 °P at the end of the boil.
 * @throws {@link OutOfRangeError} when an input is outside its unit's range.
 * @source Mass and energy balances (docs/sources.md#mass-balance, docs/sources.md#energy-balance); each number names
 * its own source in its explanation
 * @example
 * brew({ recipe, equipment, ambient }); // { ok: true, ledger: { quantities: { "fermenter.volume": 20, … } } }
 */
export function brew(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}): LedgerOutcome {
  const { recipe, equipment, ambient } = a;
  requireBrew(a);
  const sums = gristSums(recipe, equipment);
  const refused = refuse(recipe, sums);
  if (refused !== null) return refused;
  const heat = kettleHeat(equipment, ambient);
  const planned = planWithEvaporation(recipe, equipment, ambient, sums, heat);
  if (!planned.ok) return planned;
  return finish({ recipe, equipment, ambient, sums, heat, masses: planned.masses });
}

/**
 * Computes the ledger for water that has been measured out already, so that the volumes are what the kettle makes of it.
 *
 * @param a.mashWaterKg - Water in the mash, kg.
 * @param a.spargeKg - Sparge water, kg.
 * @returns As `brew`, except that the volume in the fermenter is a result.
 * @source As `brew` (docs/sources.md#mass-balance)
 */
export function brewWithWater(a: {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly mashWaterKg: number;
  readonly spargeKg: number;
}): LedgerOutcome {
  const { recipe, equipment, ambient, mashWaterKg, spargeKg } = a;
  requireBrew(a);
  requireInRange("mash water", mashWaterKg, kilograms.range);
  requireInRange("sparge water", spargeKg, kilograms.range);
  const sums = gristSums(recipe, equipment);
  const refused = refuse(recipe, sums);
  if (refused !== null) return refused;
  const heat = kettleHeat(equipment, ambient);
  const boiledOffKg = (heat.boilOffKgPerH * recipe.boil) / 60;
  const water = { recipe, equipment, sums, mashWaterKg, spargeKg };
  let masses = massBalance({ ...water, evaporatedKg: boiledOffKg });
  if ("wortLitres" in masses) return { ok: false, reason: "grain-holds-all-water", value: masses.wortLitres };
  if (!equipment.kettle.lid) {
    // The run-off does not depend on what evaporates, so one pass is exact.
    const evaporatedKg = boiledOffKg + evaporatedWhileHeating(recipe, equipment, ambient, sums, masses, heat);
    masses = massBalance({ ...water, evaporatedKg });
    if ("wortLitres" in masses) return { ok: false, reason: "grain-holds-all-water", value: masses.wortLitres };
  }
  return finish({ recipe, equipment, ambient, sums, heat, masses });
}

function refuse(recipe: Recipe, sums: GristSums): LedgerOutcome | null {
  if (sums.potentialKg + sums.addedExtractKg <= 0) {
    return { ok: false, reason: "no-fermentable", value: recipe.fermentables.length };
  }
  if (recipe.mash.length === 0) return { ok: false, reason: "no-mash-step", value: 0 };
  return null;
}

function evaporatedWhileHeating(
  recipe: Recipe,
  equipment: Equipment,
  ambient: Ambient,
  sums: GristSums,
  masses: Masses,
  heat: KettleHeat,
): number {
  const fromC = recipe.mash.at(-1)?.celsius ?? ambient.tapWater;
  const heating = heatToBoil({ equipment, ambient, sums, masses, heat }, fromC);
  return heating.ok ? heating.evaporatedKg : 0;
}

/** What evaporates on the way to the boil depends on the wort, and the wort on what evaporates. */
function planWithEvaporation(
  recipe: Recipe,
  equipment: Equipment,
  ambient: Ambient,
  sums: GristSums,
  heat: KettleHeat,
): PlannedWater {
  const boiledOffKg = (heat.boilOffKgPerH * recipe.boil) / 60;
  let heatingKg = 0;
  let planned = planWater({ recipe, equipment, sums, evaporatedKg: boiledOffKg });
  if (equipment.kettle.lid) return planned;
  for (let pass = 0; pass < MOST_EVAPORATION_PASSES && planned.ok; pass++) {
    const evaporatedKg = evaporatedWhileHeating(recipe, equipment, ambient, sums, planned.masses, heat);
    if (Math.abs(evaporatedKg - heatingKg) < 1e-12 * planned.masses.runOffKg) break;
    heatingKg = evaporatedKg;
    planned = planWater({ recipe, equipment, sums, evaporatedKg: boiledOffKg + heatingKg });
  }
  return planned;
}

type Planned = Omit<BrewState, "water" | "mashed" | "day" | "beer" | "hops" | "colourEbc" | "postBoilL">;

function finish(planned: Planned): LedgerOutcome {
  const { recipe, equipment, sums, masses, heat } = planned;
  const strongest = (100 * masses.postBoilExtractKg) / masses.postBoilKg;
  const firstWort = (100 * sums.dissolvedKg) / masses.wortKg;
  if (firstWort > STRONGEST_FIRST_WORT_PLATO) return { ok: false, reason: "too-strong", value: firstWort };
  if (!(masses.postBoilKg - masses.leftKg > LEAST_WORT_KG)) {
    return { ok: false, reason: "kettle-keeps-all-wort", value: masses.leftL };
  }
  if (strongest > STRONGEST_PLATO) return { ok: false, reason: "too-strong", value: strongest };
  const water = brewingWater(recipe.water, waterL(masses.mashWaterKg + masses.spargeKg));
  if (!water.ok) return { ok: false, reason: "too-salty", value: water.mgPerL };
  const postBoilL = postBoilLitres(masses);
  const boiledShare = 1 - recipe.topUp / masses.fermenterL;
  const colourUnits = colourUnitsOf(sums, postBoilL / boiledShare);
  if (!(colourUnits <= DARKEST_COLOUR_UNITS)) return { ok: false, reason: "too-dark", value: colourUnits };
  const alphaMgPerL = mostAlphaMgPerL(recipe, postBoilL);
  if (alphaMgPerL > MOST_ALPHA_MG_PER_L) return { ok: false, reason: "too-bitter", value: alphaMgPerL };
  const day = planDay(planned);
  const fermentables = fermentableResults(recipe, equipment, sums, masses);
  const hops = hopResults({ recipe, masses, cooling: day.cooling, boilC: heat.boilC, postBoilL, boiledShare });
  const mashed = sums.gristKg > 0 ? mashedMalt(day.phases) : null;
  const beer = afterBoil({ recipe, equipment, sums, masses, shares: fermentables, shift: mashed?.shift ?? 0 });
  const colourEbc = ebcFromSrm(srm(moreySrm(colourUnits)));
  const ledger: Ledger = {
    balances: balancesOf(sums, masses, beer),
    quantities: quantitiesOf({ ...planned, water, day, mashed, beer, hops, colourEbc, postBoilL }),
    fermentables,
    hops,
    temperatureCurve: curveThrough(day.phases),
    phases: day.phases,
    limits: limitsOf({ recipe, equipment, sums, masses, heat, day }),
  };
  return { ok: true, ledger };
}

function curveThrough(phases: readonly Phase[]): Ledger["temperatureCurve"] {
  const curve: (readonly [minute: number, celsius: number])[] = [];
  for (const { startMin, minutes, fromC, toC } of phases) curve.push([startMin, fromC], [startMin + minutes, toC]);
  return curve;
}
