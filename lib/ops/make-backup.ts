/** Makes one backup of the database at BACKUP_DATABASE_URL; `npm run backup` calls it. */
import { resolve } from "node:path";
import { parseArgs } from "node:util";
import { backUp } from "./backup/back-up";
import { Refusal } from "./refusal.mjs";

const FOLDER = ".data/backups";
const KEEP = "14";

function readFormat(text: string | undefined): "dump" | "rows" | undefined {
  if (text === undefined || text === "dump" || text === "rows") return text;
  throw new Refusal(`--format=${text} is neither dump (of pg_dump) nor rows.`);
}

function readKeep(text: string): number {
  const keep = Number(text);
  if (Number.isInteger(keep) && keep >= 1 && keep <= 10_000) return keep;
  throw new Refusal(`--keep=${text} is no whole number from 1 to 10000.`);
}

async function makeBackup(): Promise<string> {
  const { values } = parseArgs({
    options: {
      folder: { type: "string", default: FOLDER },
      keep: { type: "string", default: KEEP },
      format: { type: "string" },
    },
  });
  const made = await backUp({
    databaseUrl: process.env.BACKUP_DATABASE_URL ?? "",
    folder: resolve(values.folder),
    keep: readKeep(values.keep),
    format: readFormat(values.format),
    now: new Date(),
  });
  const how = made.format === "dump" ? "in the custom format of pg_dump" : "as rows, for want of a fitting pg_dump";
  const missing = made.missingPhotos === 0 ? "" : ` ${made.missingPhotos} photos were not in the store.`;
  const removed =
    made.removed.length === 0 ? "" : `\nRemoved, as more than ${values.keep}: ${made.removed.join(", ")}.`;
  return (
    `Backed up ${made.rows} rows of ${made.tables} tables ${how}, and ${made.photos} photos.${missing}\n` +
    `${made.path}\nSHA-256 of its SHA256SUMS, to be kept elsewhere: ${made.sum}${removed}`
  );
}

try {
  console.log(await makeBackup());
} catch (error) {
  console.error(error instanceof Refusal ? error.message : error);
  process.exitCode = 1;
}
