import "server-only";
import type { LotOffer } from "@/lib/model/row-lots";
import type { Member } from "../session";
import { lotFigures } from "./figures";
import { listLots } from "./reads";

/** The lots that the brewer of a kettle may take: their own first, then those of the club, each as it is today. */
export async function listOffers(member: Member, brewerId: string): Promise<readonly LotOffer[]> {
  const lots = (await listLots(member)).filter(({ owner, isArchived }) => {
    return !isArchived && (owner === null || owner.id === brewerId);
  });
  const figures = await lotFigures(
    member,
    lots.map(({ id }) => id),
  );
  return lots
    .map((lot) => ({ lot, figures: figures.get(lot.id) ?? null }))
    .sort((a, b) => Number(a.lot.owner === null) - Number(b.lot.owner === null));
}
