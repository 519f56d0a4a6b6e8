import { Client } from "pg";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { newInvitation } from "@/lib/model/invitation";
import { makeCalendarToken } from "@/lib/server/calendar/tokens";
import { acceptInvitation } from "@/lib/server/invitations/accept";
import { createInvitation } from "@/lib/server/invitations/writes";
import { makeSensorKey } from "@/lib/server/sensors/tokens";
import { proveCalendarReader, proveSensor, proveViewer } from "@/lib/server/session";
import { openSession } from "@/lib/server/sessions/writes";
import { newClub, newViewer } from "../support/club";

/** What each kind of secret opens, asked with any secret. */
const DOORS = {
  session: async (secret: string) => (await proveViewer(secret)) !== null,
  calendar: async (secret: string) => (await proveCalendarReader(secret)) !== null,
  sensor: async (secret: string) => (await proveSensor(secret)) !== null,
  invitation: async (secret: string) => {
    const viewer = await newViewer("Joiner");
    return acceptInvitation({ viewer, token: secret }).then(
      () => true,
      () => false,
    );
  },
} as const;

let secrets: Record<keyof typeof DOORS, string>;

beforeAll(async () => {
  const { organiser, member } = await newClub("member");
  secrets = {
    session: await openSession({ userId: member.userId, userAgent: null }),
    calendar: (await makeCalendarToken(member)).token,
    sensor: (await makeSensorKey(member, { name: "Probe", brewId: null, days: 30 })).token,
    invitation: (
      await createInvitation(organiser, newInvitation.parse({ role: "guest", email: null, maxUses: 9, days: 7 }))
    ).token,
  };
});

describe("a secret", () => {
  it.each(Object.keys(DOORS) as (keyof typeof DOORS)[])(
    "of a %s opens what it is for, and nothing else",
    async (kind) => {
      const bare = secrets[kind].replace("gyle_", "");
      for (const [door, opens] of Object.entries(DOORS)) {
        expect(await opens(secrets[kind]), door).toBe(door === kind);
        // With the prefix of a key of a sensor it is none of those either.
        if (door === "sensor" && kind !== "sensor")
          expect(await opens(`gyle_${bare}`), `${door} with a prefix`).toBe(false);
        if (kind === "sensor") expect(await opens(bare), `${door} without its prefix`).toBe(false);
      }
    },
  );
});

describe("everything that the database holds", () => {
  let database: Client;
  afterAll(() => database.end());

  it("has no secret in it that could be used, in no table and no form", async () => {
    // Its administrator sees past row-level security, as whoever has a backup does.
    const address = new URL(process.env.SUPERUSER_URL_TEST ?? "");
    address.pathname = new URL(process.env.DATABASE_URL ?? "").pathname;
    database = new Client({ connectionString: address.href });
    await database.connect();
    const { rows: tables } = await database.query<{ name: string }>(
      "SELECT format('%I', tablename) AS name FROM pg_tables WHERE schemaname = 'public'",
    );
    const forms = Object.values(secrets).flatMap((secret) => {
      const bare = secret.replace("gyle_", "");
      return [
        bare,
        ...[Buffer.from(bare, "base64url"), Buffer.from(bare), Buffer.from(secret)].map((each) => each.toString("hex")),
      ];
    });
    const found: string[] = [];
    for (const { name } of tables) {
      const { rows } = await database.query<{ n: number }>(
        `SELECT count(*)::int AS n FROM ${name} t, unnest($1::text[]) AS form WHERE strpos(t::text, form) > 0`,
        [forms],
      );
      if (rows[0]?.n !== 0) found.push(name);
    }
    expect(tables.length).toBeGreaterThan(50);
    expect(found).toEqual([]);
  });
});
