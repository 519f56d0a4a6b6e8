import { randomUUID } from "node:crypto";
import { URLSearchParams } from "node:url";
import { Refusal } from "../refusal.mjs";

const PASSWORD = "hollowmere-demo-gyle";
const MOST_PAGES = 60;
const LINK = /href="(\/s\/[^"#?]*)"/g;

/** Somebody of the demo club at one server: asks for its pages and writes into the log of a brew. */
export async function openVisitor({ port, origin, databaseUrl }) {
  const { default: pg } = await import("pg");
  const database = new pg.Client({ connectionString: databaseUrl });
  database.on("error", () => undefined);
  await database.connect();
  const brew = await findBrew(database);
  const ask = asker(`http://127.0.0.1:${port}`, origin);
  await signIn(ask, brew.email);
  const visitor = { pages: [], asked: 0, wrong: [], written: [] };
  visitor.pages = await findPages(ask, brew.slug);
  const deliver = async (ids) => {
    const { status, text } = await ask("/api/log/ingest", { method: "POST", json: deliveryOf(brew, ids) });
    if (status === 200) return JSON.parse(text);
    visitor.wrong.push(`${port} POST /api/log/ingest: ${status} ${text.slice(0, 200)}`);
    return { stored: [], duplicate: [] };
  };
  const walkOnce = async () => {
    for (const path of visitor.pages) {
      const { status } = await ask(path);
      visitor.asked += 1;
      if (status !== 200) visitor.wrong.push(`${port} GET ${path}: ${status}`);
      const { stored } = await deliver([randomUUID()]);
      visitor.written.push(...stored);
    }
  };
  return Object.assign(visitor, {
    walk: async (times) => {
      for (let n = 0; n < times; n += 1) await walkOnce();
    },
    walkUntil: async (isOver) => {
      do await walkOnce();
      while (!isOver());
    },
    /** How many of these entries the server calls known. */
    repeats: async (ids) => {
      let known = 0;
      for (let at = 0; at < ids.length; at += 50) known += (await deliver(ids.slice(at, at + 50))).duplicate.length;
      return known;
    },
    storedOf: async (ids) => {
      const { rows } = await database.query("SELECT count(*)::int AS n FROM brew_event WHERE id = ANY ($1)", [ids]);
      await database.end();
      return rows[0].n;
    },
  });
}

async function findBrew(database) {
  const { rows } = await database.query(
    `SELECT s.slug, b.id, b.brewer_user_id AS "userId", u.email_norm AS email FROM brew b JOIN space s ON s.id = b.space_id
     JOIN app_user u ON u.id = b.brewer_user_id
     WHERE s.kind = 'club' AND u.email_norm LIKE '%@hollowmere.example' AND b.state <> 'closed'
     ORDER BY b.created_at, b.id LIMIT 1`,
  );
  if (rows[0] !== undefined) return rows[0];
  throw new Refusal("The demo club has no open brew.");
}

/** Asks with the cookies that it was given. A page that leads elsewhere is not followed. */
function asker(base, origin) {
  const cookies = new Map();
  return async (path, { method = "GET", json, form } = {}) => {
    const headers = { cookie: [...cookies].map(([name, value]) => `${name}=${value}`).join("; "), origin };
    if (json !== undefined) headers["content-type"] = "application/json";
    const body = json === undefined ? form && new URLSearchParams(form) : JSON.stringify(json);
    try {
      const answer = await fetch(base + path, { method, headers, body, redirect: "manual" });
      for (const each of answer.headers.getSetCookie()) {
        const [pair] = each.split(";");
        cookies.set(pair.slice(0, pair.indexOf("=")), pair.slice(pair.indexOf("=") + 1));
      }
      return { status: answer.status, text: await answer.text() };
    } catch (error) {
      return { status: 0, text: String(error) };
    }
  };
}

async function signIn(ask, email) {
  const { text } = await ask("/api/auth/csrf");
  const { csrfToken } = JSON.parse(text);
  await ask("/api/auth/callback/credentials", {
    method: "POST",
    form: { email, password: PASSWORD, csrfToken, json: "true" },
  });
  const session = await ask("/api/auth/session");
  if (!session.text.includes("user")) throw new Refusal(`Nobody was signed in: ${session.text.slice(0, 200)}`);
}

/** Pages that lead to each other from the club's first one, those that answer. */
async function findPages(ask, slug) {
  const found = [];
  const queue = [`/s/${slug}`];
  const seen = new Set(queue);
  while (queue.length > 0 && found.length < MOST_PAGES) {
    const path = queue.shift();
    const { status, text } = await ask(path);
    if (status !== 200) continue;
    found.push(path);
    for (const [, link] of text.matchAll(LINK)) {
      if (seen.has(link)) continue;
      seen.add(link);
      queue.push(link);
    }
  }
  return found;
}

function deliveryOf({ slug, id: brewId, userId }, ids) {
  const events = ids.map((id) => ({
    ...{ id, brewId, deviceId: id, deviceSeq: 1, occurredAt: "2026-03-01T10:00:00.000Z" },
    ...{ kind: "temperature", quantity: "kettle.temperature", value: 66, sd: 0.5, instrument: "thermometer" },
    ...{ sampleC: null, note: "", entered: "66 °C", step: null },
  }));
  return { space: slug, user: userId, sentAt: new Date().toISOString(), roundTripMs: 0, unsteady: [], events };
}
