import { requireInRange } from "../errors";
import { brew, type Ambient, type Equipment, type Ledger, type Limit, type Recipe } from "../ledger";
import { SOURCE_NUMBERS } from "../ledger/recipe-numbers";
import { requireAmbient, requireEquipment, requireNumbers } from "../ledger/require-brew";
import { litres, type Litres } from "../units";
import type { Ion, Ions } from "../water";
import type { Intention, WayOut, WayOutKind } from "./intention";
import { HELD_VOLUME_RANGE, requireIntention } from "./require-intention";
import { solveAmounts } from "./solve-amounts";
import { isBroken } from "./attempt";
import { waysOut } from "./ways-out";

/** What the shared brew holds constant; the rest follows each kettle. */
export interface Hold {
  /** The same volume for everybody; null leaves it to each kettle's usual batch. */
  readonly intoFermenter: Litres | null;
}

/** How far the adapted beer is from the intention, relative; 0 where a target cannot be set on this grist. */
export interface Residuals {
  readonly volume: number;
  readonly originalExtract: number;
  readonly bitterness: number;
  /** Not zero where no row of the grist can carry the colour. */
  readonly colour: number;
  /** Reached less wanted, mg/L; not zero where no salts bring this water to the ions wanted. */
  readonly ions: Readonly<Record<Ion, number>>;
  /** Reached less wanted, pH; 0 for a recipe without acid, and where the mash is sour enough it is what it is. */
  readonly mashPh: number;
}

export type AdaptOutcome =
  | { readonly ok: true; readonly recipe: Recipe; readonly ledger: Ledger; readonly residuals: Residuals }
  | {
      readonly ok: false;
      /** The limits that the brew breaks as intended; empty when no grist reaches the strength at all. */
      readonly reasons: readonly Limit[];
      readonly recipe: Recipe | null;
      readonly ledger: Ledger | null;
      /** Ranked by distance from the intention. */
      readonly waysOut: readonly WayOut[];
    };

/**
 * Adapts an intention to one kettle: solves every amount anew and holds the result against the kettle's limits.
 *
 * @param a.intention - What the beer should be.
 * @param a.equipment - The kettle to brew it on.
 * @param a.ambient - Air, tap water and grain on the day.
 * @param a.hold - What all brewers keep the same.
 * @param a.source - The brewer's own water, in which salts are solved anew for the ions wanted; left out, the water is
 * that of the intention.
 * @param a.ways - Which ways out to search where it does not fit, each alone: none for a quick look at many kettles, one
 * that was chosen before; left out, all of them, and two at a time where few of them do.
 * @returns Amounts and ledger; where it does not fit, the broken limits and computed ways out.
 * @validRange Worts up to 35 °P at the end of the boil.
 * @throws {@link OutOfRangeError} when an input is outside its unit's range.
 * @source Mass and energy balances (docs/sources.md#mass-balance, docs/sources.md#energy-balance)
 * @example
 * adapt({ intention, equipment, ambient, hold: { intoFermenter: null } }); // { ok: true, recipe: { … } }
 */
export function adapt(a: {
  readonly intention: Intention;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly hold: Hold;
  readonly source?: Ions;
  readonly ways?: readonly WayOutKind[];
}): AdaptOutcome {
  const { equipment, ambient, hold } = a;
  requireIntention(a.intention);
  requireEquipment(equipment);
  requireAmbient(ambient);
  if (hold.intoFermenter !== null) requireInRange("volume for everybody", hold.intoFermenter, HELD_VOLUME_RANGE);
  if (a.source !== undefined) requireNumbers(a.source, SOURCE_NUMBERS);
  const intention = a.source === undefined ? a.intention : inWater(a.intention, a.source);
  const intoFermenter = hold.intoFermenter ?? intention.intoFermenter ?? equipment.usualBatch;
  const solved = solveAmounts({ intention, equipment, ambient, intoFermenter, topUp: litres(0) });
  const ledger = solved.ok ? ledgerOf(solved.recipe, equipment, ambient) : null;
  const kinds = a.ways ?? null;
  if (solved.ok && ledger !== null) {
    const reasons = ledger.limits.filter(isBroken);
    if (reasons.length === 0) {
      return { ok: true, recipe: solved.recipe, ledger, residuals: residualsOf(intention, intoFermenter, ledger) };
    }
    return {
      ok: false,
      reasons,
      recipe: solved.recipe,
      ledger,
      waysOut: waysOut({ ...a, intention, intoFermenter, reasons }, kinds),
    };
  }
  return {
    ok: false,
    reasons: [],
    recipe: null,
    ledger: null,
    waysOut: waysOut({ ...a, intention, intoFermenter, reasons: [] }, kinds),
  };
}

/** The same beer in another water: the ions wanted stay, and the doses that gave them do not. */
function inWater(intention: Intention, source: Ions): Intention {
  return { ...intention, water: { ...intention.water, source, saltsMgPerLitre: null } };
}

function ledgerOf(recipe: Recipe, equipment: Equipment, ambient: Ambient): Ledger | null {
  const outcome = brew({ recipe, equipment, ambient });
  return outcome.ok ? outcome.ledger : null;
}

/**
 * Compares an adapted ledger with its intention.
 *
 * @returns Relative differences, result over target minus 1; 0 where the target itself is 0.
 */
function residualsOf(intention: Intention, intoFermenter: Litres, ledger: Ledger): Residuals {
  const { quantities } = ledger;
  const relative = (value: number | null, target: number): number => (target === 0 ? 0 : (value ?? 0) / target - 1);
  let wanted = 0;
  let given = 0;
  intention.hops.forEach((hop, i) => {
    // A hop that is kept by its dose has no target to be away from.
    if (hop.ibu === null) return;
    wanted += hop.ibu;
    given += ledger.hops[i]?.ibu ?? 0;
  });
  return {
    volume: relative(quantities["fermenter.volume"], intoFermenter),
    originalExtract: relative(quantities["fermenter.originalExtract"], intention.originalExtract),
    bitterness: relative(given, wanted),
    colour: relative(quantities["fermenter.colour"], intention.colour),
    ions: differences((ion) => (quantities[`water.${ion}`] ?? 0) - intention.water.ions[ion]),
    mashPh: intention.water.acid === null ? 0 : (quantities["mash.ph"] ?? 0) - intention.water.acid.mashPh,
  };
}

const differences = (of: (ion: Ion) => number): Residuals["ions"] => ({
  calcium: of("calcium"),
  magnesium: of("magnesium"),
  sodium: of("sodium"),
  sulfate: of("sulfate"),
  chloride: of("chloride"),
  bicarbonate: of("bicarbonate"),
});
