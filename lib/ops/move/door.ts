import { setTimeout as delay } from "node:timers/promises";
import type { Client } from "pg";
import { DatabaseError } from "pg";

const MOST_TRIES = 20;
const LOCK_NOT_AVAILABLE = "55P03";

const SAY = `INSERT INTO space_place (space_id, state) VALUES ($1, $2)
  ON CONFLICT (space_id) DO UPDATE SET state = excluded.state, since = now()`;

/** While a space is copied nobody gets in where it comes to. */
export async function keepDoorShut(client: Client, spaceId: string): Promise<void> {
  await client.query(SAY, [spaceId, "gone"]);
}

/**
 * Lets nobody more into a space, once everybody is out. It asks for the lock that each unit of work shares (enter_space), and
 * lets go for a moment where somebody is long, so that the others do not wait behind it.
 */
export async function closeDoor(client: Client, spaceId: string): Promise<void> {
  for (let tries = 1; ; tries++) {
    try {
      await client.query("BEGIN");
      await client.query("SET LOCAL lock_timeout = '1500ms'");
      await client.query("SELECT pg_advisory_xact_lock(hashtextextended('space ' || $1::text, 0))", [spaceId]);
      await client.query(SAY, [spaceId, "leaving"]);
      await client.query("COMMIT");
      return;
    } catch (error) {
      await client.query("ROLLBACK");
      const isBusy = error instanceof DatabaseError && error.code === LOCK_NOT_AVAILABLE;
      if (!isBusy || tries === MOST_TRIES) throw error;
      await delay(200);
    }
  }
}

export async function openDoor(client: Client, spaceId: string): Promise<void> {
  await client.query("DELETE FROM space_place WHERE space_id = $1", [spaceId]);
}

/** Whoever still believes that the space is here is sent to ask the directory. */
export async function sayGone(client: Client, spaceId: string): Promise<void> {
  await client.query(SAY, [spaceId, "gone"]);
}
