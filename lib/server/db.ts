import "server-only";
import { z } from "zod";
import { Prisma } from "../../prisma/generated/client";
import type { Directory, SpaceTransaction } from "./database/client";
import { inPlace } from "./database/place";
import { PRIMARY, server } from "./database/servers";

export type { Directory, DirectoryTransaction, SpaceTransaction } from "./database/client";
export { readPublic, readSpace } from "./database/replica";
export {
  columnsOf,
  insertRowsOfSpace,
  moveRowsOfSpace,
  rowsNaming,
  rowsOfSpace,
  settleConstraints,
  type NamedRow,
} from "./database/rows-of-space";
export { acrossServers } from "./database/servers";

export const directory: Directory = server(PRIMARY);

/**
 * Runs one unit of work on the content of a space, for a person whose membership has been proven. The space is told to
 * the database first, and it shows and takes only rows of that space until the transaction ends.
 */
export function inSpace<R>(spaceId: string, userId: string, work: (tx: SpaceTransaction) => Promise<R>): Promise<R> {
  return inPlace({ spaceId, userId }, work);
}

/** A value that is JSON once it is written down, for a JSON column. */
export function toJson(value: unknown): Prisma.InputJsonValue {
  // Written and read again, so that what TypeScript cannot know of an interface is true of the result.
  return JSON.parse(JSON.stringify(value)) as Prisma.InputJsonValue;
}

/** A JSON column without a value, which the client tells from the JSON value null. */
export const JSON_NULL = Prisma.DbNull;

/** Whether a write was refused because its key, or another unique value, is there already. */
export function isUniqueViolation(error: unknown): boolean {
  return error instanceof Prisma.PrismaClientKnownRequestError && error.code === "P2002";
}

/** Classes of errors that a rule of the database gives: of data, of integrity, and raised by a trigger of ours. */
const RULE_CLASSES = ["22", "23", "P0"];

/**
 * Whether a statement of our own text was refused by a rule of the database: a check, a reference, a type. A database
 * that is away refuses nothing, and the client gives both the same code.
 */
export function isRefusedByRule(error: unknown): boolean {
  if (!(error instanceof Prisma.PrismaClientKnownRequestError) || error.code !== "P2010") return false;
  const { success, data } = driverError.safeParse(error.meta);
  return success && RULE_CLASSES.includes(data.driverAdapterError.cause.originalCode.slice(0, 2));
}

const driverError = z.object({ driverAdapterError: z.object({ cause: z.object({ originalCode: z.string() }) }) });
