import { alcoholByVolume, apparentAttenuation } from "../alcohol";
import type { QuantityId } from "../ledger";
import { measuredExtracts, WEAKEST_PLATO } from "./measured-extracts";
import type { ReadValues } from "./latest-readings";
import { measuredWort } from "./measured-wort";
import type { PlannedBrew } from "./planned-brew";
import { waterMass, wortMass } from "./wort-mass";

/** Numbers that follow from readings: efficiencies, losses and what fermentation made of the wort. */
export const DERIVED_QUANTITIES = [
  "lauter.efficiency",
  "kettle.evaporated",
  "stand.lost",
  "fermenter.efficiency",
  "fermenter.attenuation",
  "package.alcohol",
] as const satisfies readonly QuantityId[];

export type DerivedQuantity = (typeof DERIVED_QUANTITIES)[number];

type Derivation = (plan: PlannedBrew, read: ReadValues) => number | null;

const DERIVATIONS: Readonly<Record<DerivedQuantity, Derivation>> = {
  "lauter.efficiency": lauterEfficiency,
  "kettle.evaporated": evaporatedLitres,
  "stand.lost": lostLitres,
  "fermenter.efficiency": (plan, read) => {
    const wort = measuredWort(plan, read).fermenter;
    return wort === null ? null : wort.extractKg / (plan.potentialKg + plan.addedExtractKg);
  },
  "fermenter.attenuation": (_, read) => withExtracts(read, apparentAttenuation),
  "package.alcohol": (_, read) => withExtracts(read, alcoholByVolume),
};

/**
 * Computes what follows from the readings.
 *
 * @returns The value in the ledger's unit, or null where the readings do not reach.
 * @source Definitions of the ledger (docs/sources.md#mass-balance); Balling (docs/sources.md#balling-1865)
 */
export function derivedQuantity(quantity: DerivedQuantity, plan: PlannedBrew, read: ReadValues): number | null {
  return DERIVATIONS[quantity](plan, read);
}

/** The first wort tells how much dissolved; without it, what did not dissolve and what did not run off look alike. */
function lauterEfficiency(plan: PlannedBrew, read: ReadValues): number | null {
  const firstWort = read["mash.firstWort"];
  const beforeBoil = measuredWort(plan, read).beforeBoil;
  if (firstWort === undefined || beforeBoil === null || firstWort < WEAKEST_PLATO) return null;
  const waterKg = waterMass(read["water.mash"] ?? plan.mashWaterL) + plan.maltWaterKg;
  return beforeBoil.extractKg / ((firstWort * waterKg) / (100 - firstWort));
}

function evaporatedLitres(plan: PlannedBrew, read: ReadValues): number | null {
  const { beforeBoil, endOfBoil } = measuredWort(plan, read);
  if (beforeBoil === null || endOfBoil === null) return null;
  return (beforeBoil.kg + plan.addedKg - endOfBoil.kg) / waterMass(1);
}

function lostLitres(plan: PlannedBrew, read: ReadValues): number | null {
  const { endOfBoil, fermenter } = measuredWort(plan, read);
  if (endOfBoil === null || fermenter === null || endOfBoil.kg <= 0) return null;
  const kgPerLitre = wortMass(1, (100 * endOfBoil.extractKg) / endOfBoil.kg, 20).kg;
  return (endOfBoil.kg - (fermenter.kg - plan.topUpKg)) / kgPerLitre;
}

function withExtracts(read: ReadValues, of: typeof alcoholByVolume | typeof apparentAttenuation): number | null {
  const extracts = measuredExtracts(read);
  return extracts === null ? null : of(extracts);
}
