import type { Client } from "pg";
import { connectAs } from "./sql-session";

const TABLES = ["tasting_identity", "tasting_glass_key"] as const;

/**
 * Makes another world of a tasting: what each entry is goes round by one among the entries of its flight, and each glass of a
 * test holds the other beer. Codes, orders, times and everything else stay. Only the owner of the tables can, past the rules
 * that forbid it to everybody.
 */
export async function turnWorld(tastingId: string): Promise<void> {
  const owner = await connectAs("owner");
  try {
    await owner.query("BEGIN");
    for (const table of TABLES) await owner.query(`ALTER TABLE ${table} DISABLE ROW LEVEL SECURITY`);
    await owner.query("ALTER TABLE tasting_entry DISABLE ROW LEVEL SECURITY");
    for (const table of TABLES) await owner.query(`ALTER TABLE ${table} DISABLE TRIGGER USER`);
    await turnIdentities(owner, tastingId);
    await turnGlasses(owner, tastingId);
    for (const table of TABLES) await owner.query(`ALTER TABLE ${table} ENABLE TRIGGER USER`);
    for (const table of [...TABLES, "tasting_entry"])
      await owner.query(`ALTER TABLE ${table} ENABLE ROW LEVEL SECURITY`);
    await owner.query("COMMIT");
  } finally {
    await owner.end();
  }
}

/** The next code of the flight, round. */
const NEXT = `
  SELECT entry_no, coalesce(lead(entry_no) OVER flight, first_value(entry_no) OVER flight) AS next_no
  FROM tasting_entry WHERE tasting_id = $1 WINDOW flight AS (PARTITION BY flight_no ORDER BY entry_no)`;

async function turnIdentities(owner: Client, tastingId: string): Promise<void> {
  await owner.query("CREATE TEMP TABLE kept ON COMMIT DROP AS SELECT * FROM tasting_identity WHERE tasting_id = $1", [
    tastingId,
  ]);
  await owner.query("DELETE FROM tasting_identity WHERE tasting_id = $1", [tastingId]);
  await owner.query(`UPDATE kept SET entry_no = next.next_no FROM (${NEXT}) next WHERE next.entry_no = kept.entry_no`, [
    tastingId,
  ]);
  await owner.query("INSERT INTO tasting_identity SELECT * FROM kept");
}

async function turnGlasses(owner: Client, tastingId: string): Promise<void> {
  await owner.query(
    `UPDATE tasting_glass_key k SET entry_no = next.next_no FROM (${NEXT}) next
     WHERE k.tasting_id = $1 AND next.entry_no = k.entry_no`,
    [tastingId],
  );
}
