import "server-only";
import { randomUUID } from "node:crypto";
import { clubFile, type ClubFile, type ClubFilePart } from "@/lib/model/club-file/club-file";
import { newIdentifiers, partOf, peopleIn } from "@/lib/model/club-file/new-identifiers";
import { CLUB_PARTS } from "@/lib/model/club-file/parts";
import { AppError } from "../app-error";
import { inSpace, insertRowsOfSpace, rowsOfSpace } from "../db";
import { requireAbility } from "../permissions";
import { fillFiguresOf } from "../search/figures";
import type { Member } from "../session";
import { listPeople } from "../spaces/reads";
import { hashOfRows } from "./export-club";
import { insertPart, moveOn } from "./write-rows";

export interface TakenClub {
  readonly rows: number;
}

/** Reads the file of a club and holds it against its own checksums. Nothing is stored. */
export function readClubFile(text: string): ClubFile {
  const parsed = clubFile.safeParse(parseJson(text));
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    throw new AppError(
      "INVALID",
      `The file cannot be taken: ${issue?.path.join(".") ?? ""} ${issue?.message ?? ""}`.trim(),
    );
  }
  parsed.data.parts.forEach(requireSound);
  return parsed.data;
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch (cause) {
    throw new AppError("INVALID", "This is no JSON, so it is not the file of a club.", { cause });
  }
}

function requireSound({ table, rows, count, sha256 }: ClubFilePart): void {
  if (rows.length !== count || hashOfRows(rows) !== sha256) {
    throw new AppError("INVALID", `The part “${table}” is not as it was written: its checksum does not match.`);
  }
  for (const [column, schema] of Object.entries(partOf(table).checked ?? {})) {
    const wrong = rows.findIndex((row) => !schema.safeParse(row[column]).success);
    if (wrong === -1) continue;
    const [issue] = schema.safeParse(rows[wrong]?.[column]).error?.issues ?? [];
    throw new AppError(
      "INVALID",
      `Row ${String(wrong + 1)} of “${table}” cannot be taken: ${column}: ${issue?.message ?? "it is not readable"}.`,
    );
  }
}

/** What somebody is told of a file before it is taken: whose it is, who is in it, and how much. */
export function lookAtClubFile(
  member: Member,
  text: string,
): {
  readonly name: string;
  readonly exportedAt: string;
  readonly people: ClubFile["people"];
  readonly parts: readonly { readonly table: string; readonly count: number }[];
} {
  requireAbility(member, "organise");
  const { club, exportedAt, people, parts } = readClubFile(text);
  const filled = parts.filter(({ table, count }) => count > 0 && table !== "former_member");
  return { name: club.name, exportedAt, people, parts: filled.map(({ table, count }) => ({ table, count })) };
}

/**
 * Takes a whole club into an empty one, all or nothing. `matches` says who of the file is who of this club; everybody
 * else becomes a former member with the name of the file.
 */
export async function importClub(
  member: Member,
  { text, matches }: { readonly text: string; readonly matches: Readonly<Record<string, string>> },
): Promise<TakenClub> {
  requireAbility(member, "organise");
  if (member.spaceKind !== "club") throw new AppError("INVALID", "A bench of one's own is no club.");
  const file = readClubFile(text);
  const people = await matchedPeople(member, file, matches);
  const records = new Map([...newIdentifiers(file.parts, randomUUID), [file.club.id, member.spaceId]]);
  const { spaceId, userId } = member;
  const taken = await inSpace(spaceId, userId, async (tx) => {
    // Of two imports at one moment the second waits, and finds the club filled.
    await tx.$queryRaw`SELECT pg_advisory_xact_lock(hashtextextended(${`club file ${spaceId}`}, 0))::text`;
    const present = await rowsOfSpace(
      tx,
      spaceId,
      CLUB_PARTS.map(({ table }) => table),
    );
    if (present.length > 0) {
      throw new AppError("CONFLICT", "A club's file is taken into an empty club, and this one has content already.");
    }
    await insertRowsOfSpace(tx, "former_member", formerMembers(file, people, matches, spaceId));
    let rows = 0;
    for (const { table } of CLUB_PARTS) {
      if (table === "former_member") continue;
      const part = file.parts.find((found) => found.table === table);
      if (part === undefined) continue;
      await insertPart(tx, spaceId, part, { records, people });
      rows += part.count;
    }
    await moveOn(tx, spaceId, file.parts, records);
    return { rows };
  });
  // Only the calculation knows the figures that recipes are searched by; the rows of the search came with the recipes.
  await fillFiguresOf(spaceId);
  return taken;
}

async function matchedPeople(member: Member, file: ClubFile, matches: Readonly<Record<string, string>>) {
  const present = new Set((await listPeople(member)).map(({ userId }) => userId));
  const people = newIdentifiersOfPeople(file);
  for (const [id, userId] of Object.entries(matches)) {
    if (!people.has(id)) throw new AppError("INVALID", "Somebody was matched who is not in the file.");
    if (!present.has(userId))
      throw new AppError("INVALID", "Somebody of the file was matched with nobody of this club.");
    people.set(id, userId);
  }
  return people;
}

/** Placeholders in the order of the file's own identifiers, as for records. */
function newIdentifiersOfPeople(file: ClubFile): Map<string, string> {
  const old = [...new Set([...peopleIn(file.parts), ...file.people.map(({ id }) => id)])].sort();
  const made = old.map(() => randomUUID()).sort();
  return new Map(old.map((id, index) => [id, made[index] ?? randomUUID()]));
}

function formerMembers(
  file: ClubFile,
  people: ReadonlyMap<string, string>,
  matches: Readonly<Record<string, string>>,
  spaceId: string,
): readonly object[] {
  return file.people
    .filter(({ id }) => !Object.hasOwn(matches, id))
    .map(({ id, name }) => ({ space_id: spaceId, id: people.get(id), display_name: name }));
}
