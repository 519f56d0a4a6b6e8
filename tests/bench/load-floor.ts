import { randomUUID } from "node:crypto";
import { createServer } from "node:http";
import { Pool, type PoolClient } from "pg";
import { z } from "zod";

/**
 * The floor: a bare handler that asks the database for what a page or a write of the app asks for, with the driver
 * alone and as many connections, and answers with the number of rows. Run as a process of its own by `npm run load`; the
 * recordings come by message, and the number of one is the path.
 */
const statement = z.object({ text: z.string(), values: z.array(z.string().nullable()) });
const told = z.object({
  database: z.string(),
  port: z.number(),
  recordings: z.array(z.object({ connections: z.array(z.array(statement)), fresh: z.array(z.string()) })),
});
type Told = z.infer<typeof told>;
type Recorded = Told["recordings"][number];

const MOST_CONNECTIONS = 10;

process.on("message", (message) => {
  const { database, port, recordings } = told.parse(message);
  const pool = new Pool({ connectionString: database, max: MOST_CONNECTIONS, options: "-c role=gyle_app" });
  const server = createServer((request, response) => {
    const recorded = recordings[Number(request.url?.slice(1))];
    const answer = recorded === undefined ? Promise.resolve(0) : replay(pool, recorded);
    request.resume();
    answer.then(
      (rows) => response.end(String(rows)),
      (error: unknown) => response.writeHead(500).end(String(error)),
    );
  });
  server.listen(port, "127.0.0.1", () => process.send?.("listening"));
});

async function replay(pool: Pool, { connections, fresh }: Recorded): Promise<number> {
  const others = new Map(fresh.map((id) => [id, randomUUID()]));
  const counts = await Promise.all(connections.map((statements) => replayed(pool, statements, others)));
  return counts.reduce((sum, count) => sum + count, 0);
}

async function replayed(
  pool: Pool,
  statements: Recorded["connections"][number],
  others: ReadonlyMap<string, string>,
): Promise<number> {
  const client = await pool.connect();
  try {
    return await inTurn(client, statements, others);
  } finally {
    client.release();
  }
}

async function inTurn(
  client: PoolClient,
  statements: Recorded["connections"][number],
  others: ReadonlyMap<string, string>,
): Promise<number> {
  let rows = 0;
  for (const { text, values } of statements) {
    const sent = values.map((value) => (value === null ? null : withOthers(value, others)));
    rows += (await client.query(text, sent)).rowCount ?? 0;
  }
  return rows;
}

function withOthers(value: string, others: ReadonlyMap<string, string>): string {
  let text = value;
  for (const [id, other] of others) text = text.replaceAll(id, other);
  return text;
}
