import { createHash, randomBytes, randomUUID } from "node:crypto";
import { Client } from "pg";
import { EVERYBODY, type Person } from "@/tests/access/roles";
import type { AddressParts } from "./club-addresses";

/** Who may come, and where they may go: made in the database itself, because nobody leaves a club or is a guest in the demo. */
export interface AccessWorld {
  readonly cookies: Readonly<Record<Person, string>>;
  /** Records of the demo club, by the names that routes give them. */
  readonly here: AddressParts;
  /** Words that stand on pages of the demo club and on no others. */
  readonly words: readonly string[];
  /** Gives somebody who is a guest another role, or another state of membership. */
  readonly changeGuest: (to: { readonly role: string; readonly status: string }) => Promise<void>;
  readonly endSessionOf: (person: Person) => Promise<void>;
  readonly end: () => Promise<void>;
}

const HOUR_MS = 3_600_000;
const COOKIE = "gylebook-session";
/** Marks the sessions of one world, for another may be open beside it. */
const newMark = (): string => `access matrix ${randomUUID()}`;

export async function openAccessWorld(): Promise<AccessWorld> {
  const database = new Client({ connectionString: process.env.DATABASE_URL });
  await database.connect();
  // Wrong keys of sensors are counted by address, and another run may have used up what this one has.
  await database.query("DELETE FROM rate_limit WHERE key LIKE 'sensor-wrong:%'");
  const spaceId = await idOf(database, "SELECT id FROM space WHERE slug = 'hollowmere'");
  const made = await makePeople(database, spaceId);
  const named = await namedPeople(database);
  const mark = newMark();
  const tokens = await openSessions(database, mark, { ...made, ...named });
  // As closing an account leaves it, but for the session, which would still have been open.
  await database.query(
    `UPDATE app_user SET email_norm = id || '@closed.invalid', display_name = 'A former member', password_hash = NULL,
            disabled_at = now(), closed_at = now() WHERE id = $1`,
    [made.closed],
  );
  await database.query("SELECT set_config('app.space_id', $1, false), set_config('app.user_id', $2, false)", [
    spaceId,
    named.organiser,
  ]);
  const here = { ...(await readRecords(database, named.member)), person: named.steward };
  const words = await readWords(database);
  const change = "UPDATE membership SET role = $2, status = $3 WHERE user_id = $1";
  return {
    ...{ cookies: tokens, here, words },
    changeGuest: async ({ role, status }) => {
      await database.query(change, [made.guest, role, status]);
    },
    endSessionOf: async (person) => {
      const [, token = ""] = tokens[person].split("=");
      await database.query("DELETE FROM auth_session WHERE token_hash = $1", [hashOf(token)]);
    },
    end: () => forget(database, mark, Object.values(made)),
  };
}

const hashOf = (token: string): Buffer => createHash("sha256").update(token).digest();

type Made = "guest" | "former" | "closed";
type Named = Exclude<Person, Made | "anonymous">;

async function makePeople(database: Client, spaceId: string): Promise<Record<Made, string>> {
  const make = async (status: string | null): Promise<string> => {
    const id = randomUUID();
    await database.query("INSERT INTO app_user (id, email_norm, display_name) VALUES ($1, $2, 'Nadir Passerby')", [
      id,
      `${id}@access.example`,
    ]);
    const role = "INSERT INTO membership (space_id, user_id, role, status) VALUES ($1, $2, 'guest', $3)";
    if (status !== null) await database.query(role, [spaceId, id, status]);
    return id;
  };
  return { guest: await make("active"), former: await make("left"), closed: await make(null) };
}

async function namedPeople(database: Client): Promise<Record<Named, string>> {
  const person = (key: string): Promise<string> =>
    idOf(database, "SELECT id FROM app_user WHERE email_norm LIKE $1 || '@%.example'", [key]);
  return {
    outsider: await person("outsider"),
    judge: await person("judge"),
    steward: await person("steward"),
    member: await person("member"),
    organiser: await person("organiser"),
  };
}

async function openSessions(
  database: Client,
  mark: string,
  people: Readonly<Record<Exclude<Person, "anonymous">, string>>,
): Promise<Record<Person, string>> {
  const cookies = Object.fromEntries(EVERYBODY.map((person) => [person, ""])) as Record<Person, string>;
  const end = new Date(Date.now() + HOUR_MS);
  for (const [person, userId] of Object.entries(people)) {
    const token = randomBytes(32).toString("base64url");
    await database.query(
      `INSERT INTO auth_session (token_hash, user_id, user_agent, idle_expires_at, absolute_expires_at)
       VALUES ($1, $2, $4, $3, $3)`,
      [hashOf(token), userId, end, mark],
    );
    cookies[person as Person] = `${COOKIE}=${token}`;
  }
  return cookies;
}

async function readRecords(database: Client, member: string): Promise<AddressParts> {
  const id = (sql: string, values: readonly unknown[] = []): Promise<string> => idOf(database, sql, values);
  const recipe = await id("SELECT id FROM recipe WHERE title = 'Old Hundredweight'");
  const equipment = await id("SELECT id FROM equipment WHERE name = 'Test pot'");
  const tasting = await id("SELECT id FROM tasting WHERE title = 'Winter tasting'");
  const order = await id("SELECT id FROM order_round WHERE title = 'Summer malt order'");
  const shared = await database.query<{ shared: string; equipment: string }>(
    "SELECT shared_brew_id AS shared, equipment_id AS equipment FROM brew WHERE shared_brew_id IS NOT NULL ORDER BY id",
  );
  const [part] = shared.rows;
  return {
    ...{ space: "hollowmere", recipe, revision: "1", equipment, tasting, order },
    trial: await id("SELECT id FROM commissioning_trial WHERE equipment_id = $1", [equipment]),
    brew: await id(
      "SELECT id FROM brew WHERE title = 'Millrace Pale Ale' AND state = 'closed' AND brewer_user_id = $1",
      [member],
    ),
    sharedBrew: part?.shared ?? "",
    sharedKettle: part?.equipment ?? "",
    comparison: await id("SELECT id FROM saved_comparison WHERE name = 'What stays behind, kettle by kettle'"),
    ingredient: await id("SELECT id FROM ingredient WHERE name = 'Club house ale yeast (invented)'"),
    lot: await id("SELECT id FROM ingredient_lot WHERE label LIKE 'Jar on the shelf%'"),
    item: await id("SELECT id FROM order_item WHERE round_id = $1 AND name = 'Pale ale malt'", [order]),
    flight: "1",
    // The demo has no photos; who sees one, tests/server/photos holds.
    photo: randomUUID(),
    entry: await id("SELECT entry_no::text AS id FROM tasting_entry WHERE tasting_id = $1 ORDER BY 1", [tasting]),
    address: await id("SELECT address AS id FROM public_recipe WHERE withdrawn_at IS NULL ORDER BY published_at"),
    result: await id("SELECT address AS id FROM public_result WHERE withdrawn_at IS NULL ORDER BY published_at"),
  };
}

async function idOf(database: Client, sql: string, values: readonly unknown[] = []): Promise<string> {
  const { rows } = await database.query<{ id: string }>(sql, [...values]);
  const [first] = rows;
  if (first === undefined) throw new Error(`the demo club has nothing for: ${sql}`);
  return first.id;
}

async function readWords(database: Client): Promise<readonly string[]> {
  const { rows } = await database.query<{ word: string }>(
    `SELECT title AS word FROM recipe WHERE created_at < now() UNION SELECT name FROM equipment UNION SELECT title FROM order_round
     UNION SELECT title FROM tasting UNION SELECT name FROM space WHERE slug = 'hollowmere'`,
  );
  return rows.map(({ word }) => word);
}

/** Takes the people away again, with their places and sessions, so that the lists of the demo are as they were. */
async function forget(database: Client, mark: string, ids: readonly string[]): Promise<void> {
  await database.query("DELETE FROM membership WHERE user_id = ANY ($1)", [ids]);
  await database.query("DELETE FROM auth_session WHERE user_agent = $1", [mark]);
  await database.query("DELETE FROM app_user WHERE id = ANY ($1)", [ids]);
  await database.end();
}
