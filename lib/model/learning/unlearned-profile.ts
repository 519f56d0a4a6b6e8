import { FIGURES, type Equipment } from "@/lib/calc/ledger";

/**
 * A kettle as it was known before its brews: where a figure was learned, the last one that was not stands in its place.
 * Brews that made a figure would count twice if it were held against them again.
 *
 * @param revisions - Of one profile, the newest first; the first one is the present.
 */
export function unlearnedProfile(revisions: readonly [Equipment, ...Equipment[]]): Equipment {
  const [present] = revisions;
  return FIGURES.reduce((made, { of, withFigure }) => {
    const before = revisions.map(of).find(({ from }) => from !== "learned");
    return before === undefined || of(made).from !== "learned" ? made : withFigure(made, before);
  }, present);
}
