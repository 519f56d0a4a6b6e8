import "server-only";
import type { KettleEntry, KettleToAdapt } from "@/lib/model/kettle-entry";
import type { Member } from "../session";
import { readKettles } from "./figures";

/** The kettles of the first rows of a table, all at once. */
export async function readFirstKettles(
  member: Member,
  entries: readonly KettleEntry[],
): Promise<readonly KettleToAdapt[]> {
  const kettles: KettleToAdapt[] = [];
  for await (const batch of readKettles(member, entries)) kettles.push(...batch);
  return kettles;
}
