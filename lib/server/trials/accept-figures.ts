import "server-only";
import type { Equipment } from "@/lib/calc/ledger";
import { equipmentInput } from "@/lib/model/equipment";
import type { SaveOutcome } from "@/lib/model/save-outcome";
import { withKeptCorrelations } from "@/lib/model/learning/kept-correlations";
import { proposalsOf, tiesOf } from "@/lib/model/trial/proposals";
import { trialDay, type FigureAcceptance, type Trial } from "@/lib/model/trial/trial";
import { trialRuns } from "@/lib/model/trial/trial-log";
import { trialResults } from "@/lib/model/trial/trial-results";
import { AppError } from "../app-error";
import { inSpace } from "../db";
import { requireMayChange } from "../equipment/may-change";
import { findEquipment } from "../equipment/reads";
import { addRevision, presentHead } from "../equipment/writes";
import { unlessStale } from "../save-race";
import type { Member } from "../session";
import { findTrial } from "./reads";

/** Two machines may compute the last digit differently, and no more. */
const SAME = 1e-6;

/**
 * Puts figures of a trial into the profile, as a revision on `baseRev`, which has to be the newest still.
 *
 * They are computed anew from what is on the server. Where that gives another value than the reader saw, a reading came
 * in meanwhile, and nothing is saved.
 */
export async function acceptFigures(
  member: Member,
  a: FigureAcceptance & { readonly equipmentId: string },
): Promise<SaveOutcome> {
  const { spaceId, userId } = member;
  const { equipmentId, trialId, baseRev } = a;
  const trial = await findTrial(member, equipmentId, trialId);
  const profile = await findEquipment(member, equipmentId);
  if (trial === null || profile === null) throw new AppError("NOT_FOUND", "There is no such trial here.");
  requireMayChange(profile);
  if (profile.rev !== baseRev) return { ok: false, reason: "stale", headRev: profile.rev };
  const equipment = withFigures(profile.equipment, trial, a.accepted);
  return unlessStale(
    () =>
      inSpace(spaceId, userId, async (tx) => {
        const saved = await addRevision(tx, member, { id: equipmentId, baseRev, equipment });
        if (!saved.ok) return saved;
        await tx.commissioningTrial.update({
          where: { spaceId_id: { spaceId, id: trialId } },
          data: { acceptedRev: saved.rev, acceptedBy: userId, acceptedAt: new Date() },
        });
        return saved;
      }),
    () => presentHead(member, equipmentId),
  );
}

function withFigures(equipment: Equipment, trial: Trial, accepted: FigureAcceptance["accepted"]): Equipment {
  const results = trialResults(trialRuns(trial.entries), equipment);
  const proposals = proposalsOf({ results, equipment, day: trialDay(trial.begunAt) });
  const changed = accepted.reduce((present, { figure, value }) => {
    const proposal = proposals.find((each) => each.figure === figure);
    if (proposal === undefined || Math.abs(proposal.after.value - value) > SAME * Math.abs(value)) {
      throw new AppError(
        "CONFLICT",
        "A reading came in since you looked, and a figure is another one now. Look at it again; nothing was saved.",
      );
    }
    return proposal.apply(present);
  }, equipment);
  const ties = tiesOf(
    results,
    accepted.map(({ figure }) => figure),
  );
  const read = equipmentInput.safeParse(withKeptCorrelations(changed, equipment, ties));
  if (read.success) return read.data;
  throw new AppError("INVALID", `${read.error.issues.map(({ message }) => message).join(". ")}. Nothing was saved.`);
}
