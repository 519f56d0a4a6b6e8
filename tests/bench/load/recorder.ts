import { Client } from "pg";

/** A statement as the application sent it. */
export interface Statement {
  readonly text: string;
  readonly values: readonly (string | null)[];
}

/** What a request asks the database for: each connection's statements in their order. */
export type Recording = readonly (readonly Statement[])[];

interface LogLine {
  readonly pid: number;
  readonly dbname?: string;
  readonly application_name?: string;
  readonly message: string;
  readonly detail?: string;
}

/** Has the database write down every statement while something is done, and reads what the application asked for. */
export async function record(superuserUrl: string, work: () => Promise<unknown>): Promise<Recording> {
  const client = new Client({ connectionString: superuserUrl });
  await client.connect();
  try {
    const mark = `recorded ${String(performance.now())}`;
    await setLogging(superuserUrl, "all");
    await client.query(`SELECT '${mark}: begin'`);
    await work();
    await client.query(`SELECT '${mark}: end'`);
    await setLogging(superuserUrl, "none");
    const { rows } = await client.query<{ lines: string }>(
      "SELECT pg_read_file(pg_current_logfile('jsonlog')) AS lines",
    );
    const all = (rows[0]?.lines ?? "").split("\n").filter((line) => line !== "");
    const lines = all.map((line) => JSON.parse(line) as LogLine);
    const at = (end: string): number => lines.findIndex(({ message }) => message.includes(`${mark}: ${end}`));
    return grouped(lines.slice(at("begin") + 1, at("end")), new URL(superuserUrl).pathname.slice(1));
  } finally {
    await client.end();
  }
}

async function setLogging(connectionString: string, which: "all" | "none"): Promise<void> {
  // In a connection of its own each time, because a process reads its settings anew at a moment of its choosing.
  const change = new Client({ connectionString });
  await change.connect();
  await change.query(`ALTER SYSTEM SET log_statement = '${which}'`);
  await change.query("SELECT pg_reload_conf()");
  await change.end();
  for (;;) {
    const look = new Client({ connectionString });
    await look.connect();
    const { rows } = await look.query<{ log_statement: string }>("SHOW log_statement");
    await look.end();
    if (rows[0]?.log_statement === which) return;
  }
}

function grouped(lines: readonly LogLine[], database: string): Recording {
  const byConnection = new Map<number, Statement[]>();
  for (const { pid, dbname, application_name: application, message, detail } of lines) {
    const text = /^(?:execute [^:]*|statement): ([\s\S]+)$/.exec(message)?.[1];
    if (text === undefined || dbname !== database || application !== "gylebook") continue;
    byConnection.set(pid, [...(byConnection.get(pid) ?? []), { text, values: valuesIn(detail ?? "") }]);
  }
  return [...byConnection.values()];
}

/** `Parameters: $1 = 'it''s', $2 = NULL` as the values that were sent. */
function valuesIn(detail: string): readonly (string | null)[] {
  return [...detail.matchAll(/\$\d+ = (?:(NULL)|'((?:[^']|'')*)')/g)].map(([, none, text = ""]) =>
    none === undefined ? text.replaceAll("''", "'") : null,
  );
}

const UUID = /[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}/g;

/** The identifiers that are others in each of two recordings of the same request: those that it makes. */
export function freshIn(first: Recording, second: Recording): readonly string[] {
  const idsOf = (recording: Recording): ReadonlySet<string> =>
    new Set(recording.flat().flatMap(({ values }) => values.flatMap((value) => value?.match(UUID) ?? [])));
  const others = idsOf(second);
  return [...idsOf(first)].filter((id) => !others.has(id));
}
