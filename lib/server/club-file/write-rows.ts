import "server-only";
import type { ClubFilePart, ClubRow } from "@/lib/model/club-file/club-file";
import { partOf, renamedRow } from "@/lib/model/club-file/new-identifiers";
import { AppError } from "../app-error";
import {
  columnsOf,
  insertRowsOfSpace,
  isRefusedByRule,
  moveRowsOfSpace,
  settleConstraints,
  type SpaceTransaction,
} from "../db";

const ROWS_AT_ONCE = 200;

/** Writes one part of a file with its new identifiers. */
export async function insertPart(
  tx: SpaceTransaction,
  spaceId: string,
  { table, rows }: ClubFilePart,
  identifiers: Parameters<typeof renamedRow>[1],
): Promise<void> {
  const columns = new Set(await columnsOf(tx, table));
  const strange = rows
    .flatMap((row) => Object.keys(row))
    .find((column) => column === "space_id" || !columns.has(column));
  if (strange !== undefined)
    throw new AppError("INVALID", `The part “${table}” has no column ${strange.slice(0, 60)}.`);
  for (let at = 0; at < rows.length; at += ROWS_AT_ONCE) {
    const some = rows.slice(at, at + ROWS_AT_ONCE).map((row) => ({
      ...inFirstState(table, renamedRow(row, identifiers)),
      space_id: spaceId,
    }));
    await orRefusal(table, () => insertRowsOfSpace(tx, table, some));
  }
}

function inFirstState(table: string, row: ClubRow): ClubRow {
  const { moved } = partOf(table);
  if (moved === undefined) return row;
  const state = row[moved.column];
  if (typeof state !== "string" || !Object.hasOwn(moved.steps, state)) {
    throw new AppError(
      "INVALID",
      `A row of “${table}” has a ${moved.column} that is none of ${Object.keys(moved.steps).join(", ")}.`,
    );
  }
  return { ...row, [moved.column]: moved.first };
}

async function orRefusal(table: string, write: () => Promise<void>): Promise<void> {
  try {
    await write();
  } catch (cause) {
    if (!isRefusedByRule(cause)) throw cause;
    throw new AppError("INVALID", `Rows of “${table}” break a rule of the database; nothing was taken.`, { cause });
  }
}

/** Once everything is written, what went in in its first state goes on to the state of the file, step by step. */
export async function moveOn(
  tx: SpaceTransaction,
  spaceId: string,
  parts: readonly ClubFilePart[],
  records: ReadonlyMap<string, string>,
): Promise<void> {
  for (const { table, rows } of parts) {
    const { moved } = partOf(table);
    if (moved === undefined) continue;
    for (const [state, steps] of Object.entries(moved.steps)) {
      const ids = rows.flatMap((row) => {
        const id = typeof row.id === "string" ? records.get(row.id) : undefined;
        return id === undefined || row[moved.column] !== state ? [] : [id];
      });
      if (ids.length === 0) continue;
      for (const to of steps) {
        await orRefusal(table, () => moveRowsOfSpace(tx, spaceId, { table, column: moved.column, ids, to }));
      }
    }
  }
  await orRefusal("order_share", () => settleConstraints(tx));
}
