import "server-only";
import { setTimeout as delay } from "node:timers/promises";
import { directory } from "./db";

const PATIENCE_MS = 500;

/** Whether the database answers soon enough for this server to take requests. */
export async function isReady(): Promise<boolean> {
  const asked = directory.$queryRaw`SELECT 1`.then(
    () => true,
    () => false,
  );
  return Promise.race([asked, delay(PATIENCE_MS, false, { ref: false })]);
}
