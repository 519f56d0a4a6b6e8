import "server-only";
import { Pool, type ClientBase } from "pg";
import { watchPool } from "../watch-queries";

/**
 * Every connection works as gyle_app, which can neither change a table nor see past row-level security, whoever the
 * address signs in as. Statements and transactions that take too long are ended by the database.
 */
const CONNECTION_SETTINGS = [
  "-c role=gyle_app",
  "-c statement_timeout=5000",
  "-c lock_timeout=3000",
  "-c idle_in_transaction_session_timeout=10000",
].join(" ");

const MOST_CONNECTIONS = 10;
const PATIENCE_MS = 5000;

export interface PoolOrder {
  readonly address: string;
  /** A pooler in transaction mode stands between; it takes no settings of a connection, so its account has them. */
  readonly isPooled: boolean;
}

export function openPool({ address, isPooled }: PoolOrder): Pool {
  const pool = new Pool({
    ...(isPooled ? withCheck(address) : withSettings(address)),
    max: MOST_CONNECTIONS,
    connectionTimeoutMillis: PATIENCE_MS,
    application_name: "gylebook",
  });
  watchPool(pool);
  return pool;
}

function withSettings(given: string): { readonly connectionString: string; readonly options: string } {
  // Options in the address would replace ours, and with them the role.
  const address = new URL(given);
  const own = address.searchParams.get("options") ?? "";
  address.searchParams.delete("options");
  return { connectionString: address.href, options: `${own} ${CONNECTION_SETTINGS}`.trim() };
}

function withCheck(address: string) {
  // A connection is nobody's before its answer.
  return { connectionString: address, onConnect: requireSettings };
}

/** What the account behind a pooler has to bring of its own (docs/operations.md); without it nothing is asked at all. */
async function requireSettings(client: ClientBase): Promise<void> {
  const { rows } = await client.query<{ role: string; limits: boolean }>(`
    SELECT current_user AS role,
           NOT '0' = ANY (ARRAY[current_setting('statement_timeout'), current_setting('lock_timeout'),
                                current_setting('idle_in_transaction_session_timeout')]) AS limits`);
  const [found] = rows;
  if (found?.role !== "gyle_app") {
    throw new Error(
      `The account of the pooler works as ${found?.role ?? "nobody"}: it must work as gyle_app (ALTER ROLE … SET role = gyle_app).`,
    );
  }
  if (!found.limits) {
    throw new Error(
      "The account of the pooler has no limits of time: set statement_timeout, lock_timeout and idle_in_transaction_session_timeout.",
    );
  }
}
