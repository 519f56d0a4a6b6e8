import "server-only";
import { equipmentInput } from "@/lib/model/equipment";
import type { LearnedAcceptance } from "@/lib/model/learning/learned-acceptance";
import { withLearned } from "@/lib/model/learning/learned-figures";
import type { SaveOutcome } from "@/lib/model/save-outcome";
import { AppError } from "../app-error";
import { requireMayChange } from "../equipment/may-change";
import { saveEquipment } from "../equipment/writes";
import type { Member } from "../session";
import { findLearning } from "./learned";

/** Two machines may compute the last digit differently, and no more. */
const SAME = 1e-6;

/**
 * Puts learned figures into the profile, as a revision on `baseRev`, which has to be the newest still.
 *
 * They are computed anew from what is on the server. Where that gives another value than the reader saw, a brew has
 * changed meanwhile, and nothing is saved.
 */
export async function acceptLearned(
  member: Member,
  { equipmentId, baseRev, since, accepted }: LearnedAcceptance & { readonly equipmentId: string },
): Promise<SaveOutcome> {
  const learning = await findLearning(member, equipmentId, since);
  if (learning === null) throw new AppError("NOT_FOUND", "There is no such kettle or brew here.");
  const { profile, learned } = learning;
  requireMayChange(profile);
  if (profile.rev !== baseRev) return { ok: false, reason: "stale", headRev: profile.rev };
  for (const { figure, value } of accepted) {
    const proposed = learned.rows.find(({ name }) => name === figure)?.proposed;
    if (proposed === null || proposed === undefined || Math.abs(proposed.value - value) > SAME * Math.abs(value)) {
      throw new AppError(
        "CONFLICT",
        "A brew has changed since you looked, and a figure is another one now. Look at it again; nothing was saved.",
      );
    }
  }
  const changed = withLearned(profile.equipment, learned, new Set(accepted.map(({ figure }) => figure)));
  const read = equipmentInput.safeParse(changed);
  if (!read.success) {
    throw new AppError("INVALID", `${read.error.issues.map(({ message }) => message).join(". ")}. Nothing was saved.`);
  }
  return saveEquipment(member, { id: equipmentId, baseRev, equipment: read.data });
}
