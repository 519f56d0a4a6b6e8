import "server-only";
import type { Pool } from "pg";
import { operations } from "./operations";

const SLOW_MS = 200;
const LONGEST_SQL = 500;

interface AskedQuery {
  readonly query: string;
  readonly duration: number;
}

/**
 * Counts what the database is asked, and logs what took long: its text, in which values are numbered places and never
 * stand themselves.
 */
export function watchQuery({ query, duration }: AskedQuery): void {
  const told = operations();
  if (told === null) return;
  told.observe("gylebook_db_query_duration_seconds", {}, duration / 1000);
  if (duration < slowMs()) return;
  told.count("gylebook_db_slow_queries_total");
  told.log("warn", "slow query", { ms: Math.round(duration), sql: query.slice(0, LONGEST_SQL) });
}

function slowMs(): number {
  const asked = Number(process.env.SLOW_QUERY_MS ?? "");
  return asked > 0 ? asked : SLOW_MS;
}

const pools = new Set<Pool>();

/** Tells how many connections there are, and how many wait for one, of all pools of this process together. */
export function watchPool(pool: Pool): void {
  pools.add(pool);
  const sum = (countOf: (pool: Pool) => number): number => [...pools].reduce((all, each) => all + countOf(each), 0);
  // A broken idle connection is replaced at the next query; without a listener it would end the process.
  pool.on("error", () => operations()?.count("gylebook_db_connections_broken_total"));
  const told = operations();
  told?.gauge("gylebook_db_connections", () => sum((each) => each.totalCount));
  told?.gauge("gylebook_db_connections_idle", () => sum((each) => each.idleCount));
  told?.gauge("gylebook_db_connections_waited_for", () => sum((each) => each.waitingCount));
}
