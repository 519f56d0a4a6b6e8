import type { VariableId } from "./balance-variables";
import type { PlannedBrew } from "./planned-brew";
import { platoBeforeTopUp, waterMass, wortMass } from "./wort-mass";

export type ValueOf = (id: VariableId) => number;

/**
 * Writes the balances of water and extract from the mash water to the package; each is 0 when it closes.
 *
 * Hot volumes are taken at the boiling point, cold ones at 20 °C. The wort keeps its strength from the end of the boil
 * to the fermenter.
 *
 * @returns In order: first wort, water in the lauter, extract in the lauter, mass in the kettle, extract in the kettle,
 * mass from kettle to fermenter, and volume into the package; °P, kg or L.
 * @source Conservation of mass and extract (docs/sources.md#mass-balance)
 */
export function balanceErrors(plan: PlannedBrew, valueOf: ValueOf): number[] {
  const mashKg = waterMass(valueOf("water.mash")) + plan.maltWaterKg + valueOf("dissolvedKg");
  const preBoil = wortMass(valueOf("kettle.preBoil"), valueOf("kettle.preBoilGravity"), plan.boilC);
  const original = valueOf("fermenter.originalExtract");
  const fermenter = wortMass(valueOf("fermenter.volume"), original, 20);
  const hotPlato = platoBeforeTopUp(fermenter, original, plan.topUpKg);
  const postBoil = wortMass(valueOf("kettle.postBoil"), hotPlato, plan.boilC);
  return [
    mashKg > 0 ? valueOf("mash.firstWort") - (100 * valueOf("dissolvedKg")) / mashKg : 0,
    mashKg + waterMass(valueOf("spargeL")) - valueOf("retainedKg") - preBoil.kg,
    valueOf("dissolvedKg") - valueOf("lauterLostKg") - preBoil.extractKg,
    preBoil.kg + plan.addedKg - valueOf("evaporatedKg") - postBoil.kg,
    preBoil.extractKg + plan.addedExtractKg - postBoil.extractKg,
    postBoil.kg - valueOf("leftKg") - (fermenter.kg - plan.topUpKg),
    plan.beerPerWort * valueOf("fermenter.volume") - valueOf("beerLeftL") - valueOf("package.volume"),
  ];
}
