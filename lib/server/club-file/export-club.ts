import "server-only";
import { CLUB_FILE_FORMAT, CLUB_FILE_VERSION, type ClubRow } from "@/lib/model/club-file/club-file";
import { partOf } from "@/lib/model/club-file/new-identifiers";
import { CLUB_PARTS, LEFT_OUT } from "@/lib/model/club-file/parts";
import { givenNames } from "../accounts/names";
import { canonicalJson } from "../canonical-json";
import { requireAbility } from "../permissions";
import type { Member } from "../session";
import { sha256 } from "../tokens";
import { readClubRows } from "./read-rows";

const ROWS_AT_ONCE = 100;

/** The whole club as one JSON document, in pieces. People are in it by the name they show, and by nothing else. */
export async function exportClub(member: Member, now: Date): Promise<Iterable<string>> {
  requireAbility(member, "organise");
  const rows = await readClubRows(member);
  const people = await namesOf(member, rows);
  return piecesOf(member, now, rows, people);
}

function* piecesOf(
  member: Member,
  now: Date,
  rows: ReadonlyMap<string, readonly ClubRow[]>,
  people: readonly { readonly id: string; readonly name: string }[],
): Generator<string> {
  const head = {
    format: CLUB_FILE_FORMAT,
    version: CLUB_FILE_VERSION,
    exportedAt: now.toISOString(),
    club: { id: member.spaceId, name: member.spaceName },
    people,
    leftOut: LEFT_OUT,
  };
  yield `${JSON.stringify(head).slice(0, -1)},\n"parts":[`;
  for (const [index, { table }] of CLUB_PARTS.entries()) {
    const ofPart = rows.get(table) ?? [];
    yield `${index === 0 ? "" : ","}\n{"table":${JSON.stringify(table)},"rows":[`;
    for (let at = 0; at < ofPart.length; at += ROWS_AT_ONCE) {
      const lines = ofPart.slice(at, at + ROWS_AT_ONCE).map((row) => canonicalJson(row));
      yield `${at === 0 ? "\n" : ",\n"}${lines.join(",\n")}`;
    }
    yield `],"count":${String(ofPart.length)},"sha256":"${hashOfRows(ofPart)}"}`;
  }
  yield "\n]}\n";
}

export function hashOfRows(rows: readonly ClubRow[]): string {
  return Buffer.from(sha256(canonicalJson(rows))).toString("hex");
}

async function namesOf(member: Member, rows: ReadonlyMap<string, readonly ClubRow[]>) {
  const ids = new Set<string>();
  for (const [table, ofPart] of rows) {
    for (const column of partOf(table).people) {
      for (const row of ofPart) if (typeof row[column] === "string") ids.add(row[column]);
    }
  }
  const nameOf = await givenNames(member, [...ids]);
  return [...ids].sort().map((id) => ({ id, name: nameOf(id) }));
}
