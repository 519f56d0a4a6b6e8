import "server-only";
import { revisionNumber } from "@/lib/model/measured";
import { recordId } from "@/lib/model/written";

/** Whether a part of an address can be the id of a record; what cannot be is not found, and the database not asked. */
export function isRecordId(text: string): boolean {
  return recordId.safeParse(text).success;
}

export function isRevisionNumber(rev: number): boolean {
  return revisionNumber.safeParse(rev).success;
}
