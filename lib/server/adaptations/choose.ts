import "server-only";
import { z } from "zod";
import { adaptationChoice, adaptWith, NO_CHOICE, type Adaptation, type AdaptationChoice } from "@/lib/model/adaptation";
import type { KeptChoice } from "@/lib/model/kettle-entry";
import { counted, revisionNumber } from "@/lib/model/measured";
import { recipeIntention } from "@/lib/model/recipe-intention";
import { recordId } from "@/lib/model/written";
import { AppError } from "../app-error";
import { findEquipment } from "../equipment/reads";
import { lotFigures } from "../lots/figures";
import { findRevision } from "../recipes/reads";
import type { Member } from "../session";
import { listAdaptations } from "./reads";
import { saveAdaptation } from "./writes";

/** Which way out a brewer takes; empty takes the present one back. */
export const wayChange = z.strictObject({
  recipeId: recordId,
  rev: revisionNumber,
  equipmentId: recordId,
  lockVersion: counted("Version", { min: 0, max: 1_000_000_000 }),
  volume: adaptationChoice.shape.volume,
  way: z.preprocess((text) => (text === "" ? null : text), adaptationChoice.shape.way),
});
export type WayChange = z.output<typeof wayChange>;

/** What holds now: what was asked for, or what somebody else chose in the meantime. */
export type WayOutcome =
  | { readonly ok: true; readonly kept: KeptChoice }
  | { readonly ok: false; readonly reason: "stale"; readonly kept: KeptChoice | null };

/** Keeps a way out, or takes it back; the lots of the kettle stay. A way that this kettle does not have is refused. */
export async function chooseWay(member: Member, change: WayChange): Promise<WayOutcome> {
  const { equipmentId, lockVersion, volume, way, ...revision } = change;
  const present = (await listAdaptations(member, revision)).get(equipmentId);
  if ((present?.lockVersion ?? 0) !== lockVersion) return stale(present);
  const choice = { ...(present?.choice ?? NO_CHOICE), volume, way };
  await requireWay(member, change, choice);
  const saved = await saveAdaptation(member, { ...revision, equipmentId, lockVersion, choice });
  const now = (await listAdaptations(member, revision)).get(equipmentId);
  return saved.ok && now !== undefined ? { ok: true, kept: keptOf(now) } : stale(now);
}

function stale(present: Adaptation | undefined): WayOutcome {
  return { ok: false, reason: "stale", kept: present === undefined ? null : keptOf(present) };
}

export function keptOf({ lockVersion, choice, changedByName }: Adaptation): KeptChoice {
  return { lockVersion, choice, changedByName };
}

/** Computes here what the page showed: a way is not taken from the browser. */
async function requireWay(member: Member, change: WayChange, choice: AdaptationChoice): Promise<void> {
  const [revision, profile] = await Promise.all([
    findRevision(member, change.recipeId, change.rev),
    findEquipment(member, change.equipmentId),
  ]);
  const written = revision === null ? null : recipeIntention(revision.content);
  if (revision === null || profile === null || written === null) {
    throw new AppError("NOT_FOUND", "There is no such recipe or kettle here.");
  }
  if (!profile.mayWrite) {
    throw new AppError("FORBIDDEN", "Only the owner of this kettle or an organiser chooses for it.");
  }
  if (choice.way === null) return;
  const lots = await lotFigures(member, Object.values(choice.lots));
  const { equipment } = profile;
  const { chosen } = adaptWith({
    content: revision.content,
    written,
    equipment,
    choice,
    lots,
    wanted: "the chosen way",
  });
  if ((chosen?.way ?? null) === null) {
    throw new AppError("CONFLICT", "This kettle has no such way out any more: look at its ways out again.");
  }
}
