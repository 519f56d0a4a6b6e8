import { attempt, smallest, way, WEIGHT, type Misfit } from "./attempt";
import type { WayOut } from "./intention";

const MOST_BREWS = 4;

/**
 * Brews less.
 *
 * @returns The most that fits; null when hardly anything does.
 */
export function lessVolume(misfit: Misfit): WayOut | null {
  const { intoFermenter } = misfit;
  const cut = smallest(misfit, intoFermenter * 0.85, (less) => ({ intoFermenter: intoFermenter - less }));
  if (cut === null) return null;
  return way("less volume", intoFermenter - cut.amount, (WEIGHT.volume * cut.amount) / intoFermenter, cut.found);
}

/**
 * Brews more, where too little liquid would leave the element dry.
 *
 * @returns The least that fits; null when that is no reason.
 */
export function moreVolume(misfit: Misfit): WayOut | null {
  const { intoFermenter, equipment } = misfit;
  const room = equipment.fermenter.capacity - equipment.fermenter.headspace - intoFermenter;
  if (!misfit.reasons.some((limit) => limit.id === "element covered") || room <= 0) return null;
  const grown = smallest(misfit, room, (more) => ({ intoFermenter: intoFermenter + more }));
  if (grown === null) return null;
  return way("more volume", intoFermenter + grown.amount, (WEIGHT.volume * grown.amount) / intoFermenter, grown.found);
}

/**
 * Boils a stronger wort and adds water afterwards.
 *
 * @returns The least water that fits; null when half the volume does not.
 */
export function waterAfterTheBoil(misfit: Misfit): WayOut | null {
  const { intoFermenter } = misfit;
  const added = smallest(misfit, intoFermenter * 0.5, (topUp) => ({ topUp }));
  if (added === null) return null;
  return way("water after the boil", added.amount, (WEIGHT.topUp * added.amount) / intoFermenter, added.found);
}

/**
 * Brews the volume in equal parts on several days.
 *
 * @returns The fewest brews that fit; null when four do not.
 */
export function splitBatch(misfit: Misfit): WayOut | null {
  for (let brews = 2; brews <= MOST_BREWS; brews++) {
    const found = attempt(misfit, { intoFermenter: misfit.intoFermenter / brews });
    if (found?.fits === true) {
      return way("split batch", brews, WEIGHT.secondBrew * (brews - 1), found, brews);
    }
  }
  return null;
}
