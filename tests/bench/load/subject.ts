import { hash, randomBytes } from "node:crypto";
import { Client } from "pg";

/** Somebody signed in. */
export interface Reader {
  readonly userId: string;
  readonly reference: string;
}

/** One club of a federation, and what of it is asked for. The same club has the same identifiers in every database. */
export interface Subject {
  readonly slug: string;
  readonly organiser: Reader;
  readonly judge: Reader;
  readonly recipe: string;
  readonly brew: string;
  readonly sharedBrew: string;
  readonly published: string;
  /** An open tasting, a scored flight of it, and an entry that the judge has before him or her. */
  readonly tasting: string;
  readonly flight: number;
  readonly entry: number;
  /** What a recipe says, for those that are written. */
  readonly content: unknown;
}

const ONE = `
  WITH club AS (SELECT id, slug FROM space WHERE slug = $1),
  served AS (SELECT s.* FROM tasting t JOIN tasting_serving s ON s.space_id = t.space_id AND s.tasting_id = t.id
             JOIN tasting_panel p ON p.space_id = s.space_id AND p.tasting_id = s.tasting_id
               AND p.flight_no = s.flight_no AND p.user_id = s.judge_id AND p.part = 'judge'
             JOIN tasting_flight f ON f.space_id = s.space_id AND f.tasting_id = s.tasting_id
               AND f.flight_no = s.flight_no AND f.kind = 'scored'
             WHERE t.state = 'open' AND t.space_id = (SELECT id FROM club) ORDER BY s.judge_id, s.position LIMIT 1)
  SELECT club.slug,
    (SELECT user_id FROM membership WHERE space_id = club.id AND role = 'organiser' ORDER BY joined_at LIMIT 1) AS organiser,
    (SELECT judge_id FROM served) AS judge, (SELECT tasting_id FROM served) AS tasting,
    (SELECT flight_no FROM served) AS flight, (SELECT entry_no FROM served) AS entry,
    r.id AS recipe, v.content,
    (SELECT b.id FROM brew b WHERE b.space_id = club.id AND b.shared_brew_id IS NOT NULL AND b.state = 'closed'
     ORDER BY b.id LIMIT 1) AS brew,
    (SELECT b.shared_brew_id FROM brew b WHERE b.space_id = club.id AND b.shared_brew_id IS NOT NULL AND b.state = 'closed'
     ORDER BY b.id LIMIT 1) AS "sharedBrew",
    (SELECT address FROM public_recipe WHERE source_space_id = club.id) AS published
  FROM club JOIN recipe r ON r.space_id = club.id AND r.title = 'Millrace Pale Ale'
  JOIN recipe_revision v ON v.space_id = club.id AND v.recipe_id = r.id AND v.rev = r.head_rev`;

type Row = Omit<Subject, "organiser" | "judge"> & { readonly organiser: string; readonly judge: string };

/** Finds the club in each of the databases and signs its people in there, with one reference for all. */
export async function openSubject(superuserUrls: readonly string[], slug: string): Promise<Subject> {
  const organiser = randomBytes(32).toString("base64url");
  const judge = randomBytes(32).toString("base64url");
  let found: Row | undefined;
  for (const connectionString of superuserUrls) {
    const client = new Client({ connectionString });
    await client.connect();
    [found] = (await client.query<Row>(ONE, [slug])).rows;
    if (found === undefined) throw new Error(`there is no ${slug}`);
    await signIn(client, found.organiser, organiser);
    await signIn(client, found.judge, judge);
    await client.end();
  }
  if (found === undefined) throw new Error("there is no database");
  return {
    ...found,
    organiser: { userId: found.organiser, reference: organiser },
    judge: { userId: found.judge, reference: judge },
  };
}

async function signIn(client: Client, userId: string, reference: string): Promise<void> {
  await client.query(
    `INSERT INTO auth_session (token_hash, user_id, user_agent, idle_expires_at, absolute_expires_at)
     VALUES ($1, $2, 'load', now() + interval '1 day', now() + interval '1 day')`,
    [hash("sha256", reference, "buffer"), userId],
  );
}
