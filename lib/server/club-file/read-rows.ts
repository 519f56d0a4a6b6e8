import "server-only";
import type { ClubRow } from "@/lib/model/club-file/club-file";
import { CLUB_PARTS, type ClubPart } from "@/lib/model/club-file/parts";
import { inSpace, rowsOfSpace } from "../db";
import type { Member } from "../session";

/** All rows of a club, part by part, as they stood at one moment: one statement sees one state of the database. */
export async function readClubRows({ spaceId, userId }: Member): Promise<ReadonlyMap<string, readonly ClubRow[]>> {
  const found = await inSpace(spaceId, userId, (tx) =>
    rowsOfSpace(
      tx,
      spaceId,
      CLUB_PARTS.map(({ table }) => table),
    ),
  );
  return new Map(
    CLUB_PARTS.map((part) => {
      const rows = found.filter(({ part: table }) => table === part.table).map(({ row }) => row as ClubRow);
      return [part.table, [...rows].sort((a, b) => byKey(part, a, b))];
    }),
  );
}

function byKey({ key }: ClubPart, a: ClubRow, b: ClubRow): number {
  for (const column of key) {
    const [left, right] = [a[column], b[column]];
    if (typeof left === "number" && typeof right === "number" && left !== right) return left - right;
    const [first, second] = [JSON.stringify(left), JSON.stringify(right)];
    if (first !== second) return first < second ? -1 : 1;
  }
  return 0;
}
