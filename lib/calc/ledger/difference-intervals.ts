import { Z80 } from "../statistics";
import { brew } from "./brew";
import type { Ambient, Equipment } from "./equipment";
import { effectsOf, isPredicted, type Effect, type Interval, type Intervals } from "./interval";
import { QUANTITY_IDS, type QuantityId } from "./quantity-catalogue";
import type { Recipe } from "./recipe";

interface Brewing {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
}

/**
 * Gives 80 % intervals for how far the numbers of one brew are from those of another.
 *
 * What both share is off in both alike and drops out of the difference as far as its effects are the same: the figures of
 * one kettle, the deliveries of malt and hops, the attenuation of one yeast. What they do not share adds up. So a change
 * of a recipe can be surer than either number, and the intervals of the two must not be subtracted.
 *
 * @param a.before - The brew to compare with.
 * @param a.after - The other one; raw materials are taken to be of the same deliveries.
 * @returns An interval for `after` less `before`, for each predicted quantity that both have; empty when one of them
 * cannot be brewed.
 * @validRange Figures whose effect is near linear over their uncertainty.
 * @throws {@link OutOfRangeError} when an input is outside its unit's range.
 * @source JCGM 100:2008, law of propagation of uncertainty (docs/sources.md#jcgm-100-2008)
 * @example
 * differenceIntervals({ before, after })["fermenter.originalExtract"]; // { low80: 0.81, high80: 0.92 }
 */
export function differenceIntervals(a: { readonly before: Brewing; readonly after: Brewing }): Intervals {
  const before = brew(a.before);
  const after = brew(a.after);
  if (!before.ok || !after.ok) return {};
  const earlier = effectsOf(a.before, before.ledger);
  const later = effectsOf(a.after, after.ledger);
  const isShared = sharedBy(a.before, a.after);
  const found: Partial<Record<QuantityId, Interval>> = {};
  for (const id of QUANTITY_IDS) {
    const from = before.ledger.quantities[id];
    const to = after.ledger.quantities[id];
    if (from === null || to === null || !isPredicted(id)) continue;
    const half = Z80 * Math.sqrt(varianceOf(earlier, later, id, isShared));
    found[id] = { low80: to - from - half, high80: to - from + half };
  }
  return found;
}

type Name = Effect["name"];

/** Figures and the hand that pours are shared where the whole kettle is, and attenuation where the yeast is. */
function sharedBy(before: Brewing, after: Brewing): (name: Name) => boolean {
  const oneKettle = JSON.stringify(before.equipment) === JSON.stringify(after.equipment);
  const oneYeast = before.recipe.yeast.name === after.recipe.yeast.name;
  return (name) => {
    if (MATERIALS.has(name)) return true;
    return name === "attenuation" ? oneYeast : oneKettle;
  };
}

const MATERIALS: ReadonlySet<Name> = new Set<Name>(["malt extract", "malt colour", "malt acidity", "alpha acids"]);

function varianceOf(
  earlier: readonly Effect[],
  later: readonly Effect[],
  id: QuantityId,
  isShared: (name: Name) => boolean,
): number {
  const names = new Set([...earlier, ...later].map(({ name }) => name));
  let variance = 0;
  for (const name of names) {
    const one = changeBy(earlier, name, id);
    const other = changeBy(later, name, id);
    variance += isShared(name) ? (other - one) ** 2 : other ** 2 + one ** 2;
  }
  return variance;
}

function changeBy(effects: readonly Effect[], name: Name, id: QuantityId): number {
  return effects.find((effect) => effect.name === name)?.change[id] ?? 0;
}
