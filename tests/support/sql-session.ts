import { Client } from "pg";

export interface SpaceContext {
  readonly spaceId: string;
  readonly userId: string;
}

export type Row = Readonly<Record<string, unknown>>;

/** A connection of its own to the test database, for what the service functions would never send. */
export async function connectAs(role: "owner" | "gyle_app", context?: SpaceContext): Promise<Client> {
  const settings = [
    ...(role === "gyle_app" ? ["-c role=gyle_app"] : []),
    ...(context === undefined ? [] : [`-c app.space_id=${context.spaceId}`, `-c app.user_id=${context.userId}`]),
  ];
  const client = new Client({ connectionString: process.env.DATABASE_URL, options: settings.join(" ") });
  await client.connect();
  return client;
}

/** Inserts one row; objects become JSON. */
export async function insert(client: Client, table: string, row: Row): Promise<void> {
  const columns = Object.keys(row);
  const places = columns.map((_, index) => `$${index + 1}`);
  const values = Object.values(row).map(toParameter);
  await client.query(`INSERT INTO ${table} (${columns.join(", ")}) VALUES (${places.join(", ")})`, values);
}

// The driver would send an array as a PostgreSQL array.
function toParameter(value: unknown): unknown {
  const isPlain = typeof value === "object" && value !== null && !Buffer.isBuffer(value) && !(value instanceof Date);
  return isPlain ? JSON.stringify(value) : value;
}
