import "server-only";
import { directory, type DirectoryTransaction } from "./db";

/** So many at once, and then one in each interval. */
export interface Limit {
  readonly burst: number;
  readonly intervalS: number;
}

/**
 * Takes one turn under a key, or says that there is none now. This is the generic cell rate algorithm: the row keeps
 * the time at which the key would be idle again, and one statement moves it, so that requests on any number of servers
 * share one count. Whoever is refused waits; nobody is locked out.
 */
export async function takeTurn(
  key: string,
  { burst, intervalS }: Limit,
  database: Pick<DirectoryTransaction, "$queryRaw"> = directory,
): Promise<boolean> {
  const taken = await database.$queryRaw<unknown[]>`
    INSERT INTO rate_limit AS r (key, tat)
    VALUES (${key}, clock_timestamp() + make_interval(secs => ${intervalS}::float8))
    ON CONFLICT (key) DO UPDATE
      SET tat = greatest(r.tat, clock_timestamp()) + make_interval(secs => ${intervalS}::float8)
      WHERE r.tat <= clock_timestamp() + make_interval(secs => ${intervalS}::float8 * (${burst}::int - 1))
    RETURNING 1 AS taken`;
  return taken.length === 1;
}

/** Gives a turn back, for an attempt that turned out to be rightful. */
export async function giveTurnBack(key: string, { intervalS }: Limit): Promise<void> {
  await directory.$executeRaw`
    UPDATE rate_limit SET tat = tat - make_interval(secs => ${intervalS}::float8) WHERE key = ${key}`;
}
