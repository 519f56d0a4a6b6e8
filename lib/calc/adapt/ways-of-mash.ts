import { celsius, fraction, litresPerKilogram, minutes } from "../units";
import { attempt, smallest, way, WEIGHT, type Misfit } from "./attempt";
import type { Intention, WayOut } from "./intention";
import { baseMalt, DRY_MALT_EXTRACT, WHITE_SUGAR, withKettleExtract } from "./kettle-extract";

const LONGEST_BOIL_MIN = 180;
/** Share of the extract that may be sugar; with more the beer is thin and the yeast starves. Common practice, no source. */
const MOST_SUGAR = 0.2;
/** Thinner mashes convert slowly. Common practice, no source. */
const THINNEST_L_PER_KG = 5;

/**
 * Replaces base malt by dry malt extract in the kettle.
 *
 * @returns The least that fits; null when all of it does not.
 */
export function maltExtract(misfit: Misfit): WayOut | null {
  const replaced = smallest(misfit, 1, (share) => ({
    intention: withKettleExtract(misfit.intention, DRY_MALT_EXTRACT, fraction(share)),
  }));
  if (replaced === null) return null;
  return way(
    "malt extract for part of the grist",
    replaced.amount,
    WEIGHT.maltExtract * replaced.amount,
    replaced.found,
  );
}

/**
 * Replaces base malt by white sugar in the kettle, as far as the beer bears it: it ferments completely and leaves a
 * drier and thinner beer.
 *
 * @returns The least that fits; null when all that the beer bears does not.
 */
export function sugar(misfit: Misfit): WayOut | null {
  const { intention } = misfit;
  const base = baseMalt(intention);
  const room = intention.fermentables.reduce(
    (left, row) => (row.kind === "sugar" ? left - row.share : left),
    MOST_SUGAR,
  );
  if (base === null || room <= 0) return null;
  const replaced = smallest(misfit, Math.min(1, room / base.share), (share) => ({
    intention: withKettleExtract(intention, WHITE_SUGAR, fraction(share)),
  }));
  if (replaced === null) return null;
  return way("sugar for part of the grist", replaced.amount, WEIGHT.sugar * replaced.amount, replaced.found);
}

/**
 * Mashes with less water and sparges with more.
 *
 * @returns The thinnest mash that fits; null when the thickest does not.
 */
export function thickerMash(misfit: Misfit): WayOut | null {
  const { intention, equipment } = misfit;
  const from = intention.thickness;
  if (from === null || equipment.lauter.method === "none" || from <= equipment.mash.thickest) return null;
  const thicker = smallest(misfit, from - equipment.mash.thickest, (less) => ({
    intention: { ...intention, thickness: litresPerKilogram(from - less) },
  }));
  if (thicker === null) return null;
  return way("thicker mash", from - thicker.amount, (WEIGHT.thickness * thicker.amount) / from, thicker.found);
}

/**
 * Mashes with more water, for infusions that would leave the first rest too thick.
 *
 * @returns The thickest mash that fits; null when the thinnest does not.
 */
export function thinnerMash(misfit: Misfit): WayOut | null {
  const { intention, equipment } = misfit;
  const from = intention.thickness;
  if (from === null || equipment.lauter.method === "none" || from >= THINNEST_L_PER_KG) return null;
  const thinner = smallest(misfit, THINNEST_L_PER_KG - from, (more) => ({
    intention: { ...intention, thickness: litresPerKilogram(from + more) },
  }));
  if (thinner === null) return null;
  return way("thinner mash", from + thinner.amount, (WEIGHT.thickness * thinner.amount) / from, thinner.found);
}

/**
 * Keeps only the first rest, for a tun that cannot be heated to the others.
 *
 * @returns The brew with one rest; null when it does not fit or the rests are no reason.
 */
export function fewerRests(misfit: Misfit): WayOut | null {
  const { intention } = misfit;
  const dropped = intention.mash.length - 1;
  if (dropped < 1 || !misfit.reasons.some((limit) => limit.id === "mash steps")) return null;
  const found = attempt(misfit, { intention: withFirstRest(intention) });
  return found?.fits === true ? way("fewer rests", 1, WEIGHT.droppedRest * dropped, found) : null;
}

/**
 * Mashes the grist in two halves, one after the other.
 *
 * @returns The brew with two mashes; null when they do not fit either.
 */
export function twoMashes(misfit: Misfit): WayOut | null {
  const found = attempt(misfit, { intention: { ...misfit.intention, mashes: 2 } });
  return found?.fits === true ? way("two mashes", 2, WEIGHT.secondMash, found) : null;
}

/**
 * Boils longer, so that more water can wash the grain.
 *
 * @returns The shortest boil that fits; null when the longest does not.
 */
export function longerBoil(misfit: Misfit): WayOut | null {
  const { intention } = misfit;
  const room = LONGEST_BOIL_MIN - intention.boil;
  if (room <= 0) return null;
  const longer = smallest(misfit, room, (more) => ({
    intention: { ...intention, boil: minutes(intention.boil + more) },
  }));
  if (longer === null) return null;
  return way("longer boil", intention.boil + longer.amount, (WEIGHT.boilHour * longer.amount) / 60, longer.found);
}

/**
 * Brings the later rests nearer to the first one, for a tun that cannot be heated all the way up.
 *
 * @returns The warmest rests that fit; null when the rests are no reason.
 */
export function gentlerSteps(misfit: Misfit): WayOut | null {
  if (!misfit.reasons.some((limit) => limit.id === "mash steps")) return null;
  const gentler = smallest(misfit, 1, (share) => ({ intention: withGentlerSteps(misfit.intention, share) }));
  if (gentler === null) return null;
  const warmest = Math.max(...gentler.found.recipe.mash.map((step) => step.celsius));
  return way("gentler steps", warmest, WEIGHT.gentlerSteps * gentler.amount, gentler.found);
}

/**
 * Mashes once, at the mean temperature of all rests and for as long as they take together.
 *
 * @returns The brew with one rest; null when it does not fit or the rests are no reason.
 */
export function oneRestInstead(misfit: Misfit): WayOut | null {
  const { mash } = misfit.intention;
  const total = mash.reduce((sum, step) => sum + step.minutes, 0);
  if (total === 0 || !misfit.reasons.some((limit) => limit.id === "mash steps")) return null;
  const mean = mash.reduce((sum, step) => sum + step.celsius * step.minutes, 0) / total;
  const rest = { celsius: celsius(mean), minutes: minutes(total) };
  const found = attempt(misfit, { intention: { ...misfit.intention, mash: [rest] } });
  return found?.fits === true ? way("one rest instead", mean, WEIGHT.oneRestInstead, found) : null;
}

function withGentlerSteps(intention: Intention, share: number): Intention {
  const first = intention.mash[0]?.celsius ?? 0;
  return {
    ...intention,
    mash: intention.mash.map((step) => ({ ...step, celsius: celsius(step.celsius - share * (step.celsius - first)) })),
  };
}

/**
 * Drops all rests but the first.
 *
 * @returns An intention with one rest.
 */
export function withFirstRest(intention: Intention): Intention {
  return { ...intention, mash: intention.mash.slice(0, 1) };
}

/** Half a litre for each kilogram at a time is as fine as brewers mash. */
const THICKNESS_STEP = 0.5;

/**
 * Thins the mash until the infusions leave enough water for the first rest, whatever else then breaks.
 *
 * @returns The same misfit with a thinner mash; null when no mash is thin enough.
 */
export function thinEnoughForSteps(misfit: Misfit): Misfit | null {
  const { intention, equipment } = misfit;
  if (intention.thickness === null || equipment.lauter.method === "none") return null;
  for (
    let thickness = intention.thickness + THICKNESS_STEP;
    thickness <= THINNEST_L_PER_KG;
    thickness += THICKNESS_STEP
  ) {
    const thinner = { ...intention, thickness: litresPerKilogram(thickness) };
    const steps = attempt(misfit, { intention: thinner })?.ledger.limits.find((limit) => limit.id === "mash steps");
    if (steps?.ok === true) return { ...misfit, intention: thinner };
  }
  return null;
}
