import { z } from "zod";
import { recordId, written } from "../written";
import { CLUB_PARTS } from "./parts";

export const CLUB_FILE_FORMAT = "gylebook-club";
export const CLUB_FILE_VERSION = 1;
/** As much as is read into memory at once. */
export const CLUB_FILE_BYTES = 32 * 1024 * 1024;
const MOST_ROWS = 200_000;

const TABLES = CLUB_PARTS.map(({ table }) => table);
/** Parts of older files that are made anew now; what they hold is passed over. */
const NO_LONGER = ["brew_summary"];

const row = z.record(z.string().max(60), z.json());
export type ClubRow = Readonly<Record<string, z.core.util.JSONType>>;

const part = z.strictObject({
  table: z.enum([...TABLES, ...NO_LONGER], { error: "a part of a club's file has the name of one of its tables" }),
  rows: z.array(row).max(MOST_ROWS),
  count: z.int().min(0),
  /** Of the rows, as JSON with the keys of every record in order and without blanks. */
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
});
export type ClubFilePart = z.output<typeof part>;

/** A whole club as one JSON document; docs/club-export.md describes it. */
export const clubFile = z
  .strictObject({
    format: z.literal(CLUB_FILE_FORMAT, { error: "this is not the file of a club" }),
    version: z.literal(CLUB_FILE_VERSION, {
      error: `the file is of another version than ${String(CLUB_FILE_VERSION)}, which this program reads`,
    }),
    exportedAt: z.iso.datetime(),
    club: z.strictObject({ id: recordId, name: written("Name of the club", 120) }),
    people: z.array(z.strictObject({ id: recordId, name: written("Name of a person", 80) })).max(10_000),
    leftOut: z.record(z.string().max(60), z.string().max(200)),
    parts: z
      .array(part)
      .max(TABLES.length + NO_LONGER.length)
      .transform((parts) => parts.filter(({ table }) => !NO_LONGER.includes(table))),
  })
  .refine(({ parts }) => new Set(parts.map(({ table }) => table)).size === parts.length, {
    error: "a part of the file is there twice",
  });
export type ClubFile = z.output<typeof clubFile>;
