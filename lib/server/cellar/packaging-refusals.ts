import "server-only";
import { fermentationOf } from "@/lib/model/cellar/fermentation";
import { isSignedWith, overRated, type OverRated } from "@/lib/model/cellar/package-pressure";
import { notStable } from "@/lib/model/cellar/stable-words";
import type { EventStamp, LogEvent, Packaged } from "@/lib/model/log/log-event";
import type { SpaceTransaction } from "../db";
import type { NewEvent } from "../log/insert-events";
import type { Member } from "../session";
import { CELLAR_COLUMNS, toFermenting } from "./fermenting-brew";

type PackageEvent = EventStamp & Packaged;

/**
 * Why beer must not go into its containers, by the id of the event that says it did: more pressure than they are made for,
 * or a gravity that was not seen to stand still, and nobody who signs for it. It holds for every way into the log.
 */
export async function packagingRefusals(
  tx: SpaceTransaction,
  member: Pick<Member, "spaceId" | "displayName">,
  events: readonly NewEvent[],
): Promise<ReadonlyMap<string, string>> {
  const refusals = new Map<string, string>();
  const { spaceId } = member;
  for (const { event } of events) {
    if (!isPackaging(event)) continue;
    const kept = await tx.brewEvent.count({ where: { spaceId, id: event.id } });
    const brew = await tx.brew.findUnique({
      where: { spaceId_id: { spaceId, id: event.brewId } },
      select: CELLAR_COLUMNS,
    });
    // What is in the log already is only delivered again; a brew that is not here is refused for that.
    if (kept > 0 || brew === null) continue;
    const fermenting = toFermenting(brew);
    const over = overRated(event, fermenting.recipe.packaging.rated);
    const reason =
      whyNotSigned(event, over, [member.displayName, brew.title]) ??
      (event.early === null ? notStable(fermentationOf(fermenting)) : null);
    if (reason !== null) refusals.set(event.id, reason);
  }
  return refusals;
}

function isPackaging(event: LogEvent): event is PackageEvent {
  return event.kind === "package";
}

function whyNotSigned({ override }: PackageEvent, over: readonly OverRated[], names: readonly string[]): string | null {
  const [first] = over;
  if (first === undefined) return null;
  if (override === null) {
    return `${first.name} is not made for this carbonation. Use less, or go over the rating by name and with a reason.`;
  }
  if (isSignedWith(override.name, names)) return null;
  return `The name “${override.name}” is neither yours nor that of the beer: type “${names.join("” or “")}”.`;
}
