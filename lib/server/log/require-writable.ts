import "server-only";
import { AppError } from "../app-error";
import { inSpace, type SpaceTransaction } from "../db";
import { isRecordId } from "../record-id";
import type { Member } from "../session";
import { brewRefusals, NO_SUCH_BREW } from "./writable-brews";

/** Stops whoever may not write to a brew; a brew of another club is none. */
export async function requireWritableBrew(tx: SpaceTransaction, member: Member, id: string): Promise<void> {
  if (!isRecordId(id)) throw new AppError("NOT_FOUND", NO_SUCH_BREW);
  const refusal = (await brewRefusals(tx, member, new Set([id])))(id);
  if (refusal !== null) throw new AppError(refusal === NO_SUCH_BREW ? "NOT_FOUND" : "FORBIDDEN", refusal);
}

/** The same before anything else of a request is looked at. */
export function mayAddTo(member: Member, brewId: string): Promise<void> {
  return inSpace(member.spaceId, member.userId, (tx) => requireWritableBrew(tx, member, brewId));
}
