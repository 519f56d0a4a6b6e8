import "server-only";
import type { SaveOutcome } from "@/lib/model/save-outcome";
import { isUniqueViolation } from "./db";

/** Somebody else saved on the same revision first. Thrown inside a transaction, so that nothing of it stays. */
export class LostRace extends Error {
  override readonly name = "LostRace";
}

/**
 * Runs a save of a new revision. Its key is the lock: of many inserts on one base the database lets one through, and
 * the others learn which revision is the newest now.
 */
export async function unlessStale(
  save: () => Promise<SaveOutcome>,
  presentHead: () => Promise<number>,
): Promise<SaveOutcome> {
  try {
    return await save();
  } catch (error) {
    if (!isUniqueViolation(error) && !(error instanceof LostRace)) throw error;
    return { ok: false, reason: "stale", headRev: await presentHead() };
  }
}
