/**
 * Searching 100 000 recipes of one club, as the application does it, against a bare query in the same kind of transaction.
 * The database comes from the environment (`npm run bench`), is migrated and may be filled.
 */
import { randomUUID } from "node:crypto";
import { Client } from "pg";
import { SEARCH_KINDS, searchInput, type SearchInput } from "@/lib/model/search";
import { directory, inSpace } from "@/lib/server/db";
import { environment } from "@/lib/server/environment";
import { proveMember, proveViewer, type Member } from "@/lib/server/proof";
import { search } from "@/lib/server/search/find";
import { openSession } from "@/lib/server/sessions/writes";
import { createAccount } from "@/lib/server/accounts/create-account";
import { foundClub } from "@/lib/server/spaces/writes";

const RECIPES = 100_000;
const ROUNDS = 12;

/** Names of beers and of what goes in, invented, some of them in every tenth recipe and some in one of hundreds. */
const FIRST = [
  "Mill",
  "Kettle",
  "Copper",
  "Harbour",
  "Quay",
  "Winter",
  "Orchard",
  "Lantern",
  "Marsh",
  "Stone",
  "Ferry",
  "Ash",
];
const SECOND = ["race", "house", "gate", "brook", "field", "lane", "bridge", "hill", "wharf", "yard", "croft", "moor"];
const BEERS = [
  "pale ale",
  "porter",
  "stout",
  "bitter",
  "mild",
  "pilsner",
  "saison",
  "wheat beer",
  "barley wine",
  "lager",
];
const HOPS = [
  "Alder",
  "Birch",
  "Cedar",
  "Dogwood",
  "Elder",
  "Fir",
  "Gorse",
  "Hazel",
  "Iris",
  "Juniper",
  "Larch",
  "Maple",
];

const FILL = `
  WITH numbered AS (
    SELECT n, md5(n::text || 'recipe')::uuid AS id,
           ($3::text[])[1 + n % 12] || ($4::text[])[1 + (n / 12) % 12] || ' ' || ($5::text[])[1 + (n / 144) % 10] ||
             ' ' || to_hex(n % 4099) AS title
    FROM generate_series($1::int, $2::int) AS n
  ), made AS (
    INSERT INTO recipe (space_id, id, title, head_rev, root_id, created_by, created_at)
    SELECT ctx_space(), id, title, 1, id, ctx_user(), now() - n * interval '1 minute' FROM numbered
    RETURNING id
  )
  INSERT INTO recipe_revision (space_id, recipe_id, rev, content, content_hash, calc_version, author_id, created_at)
  SELECT ctx_space(), id, 1,
         jsonb_build_object('notes', 'Batch ' || n || ', ' || md5(n::text), 'style', (1 + n % 30) || 'A', 'recipe',
           jsonb_build_object('fermentables', jsonb_build_array(jsonb_build_object('name', 'Pale malt'),
             jsonb_build_object('name', 'Crystal ' || n % 90)), 'hops', jsonb_build_array(
             jsonb_build_object('name', ($6::text[])[1 + n % 12]), jsonb_build_object('name', ($6::text[])[1 + n % 7])),
             'yeast', jsonb_build_object('name', 'Yeast ' || n % 40))),
         sha256(n::text::bytea), 'bench', ctx_user(), now() - n * interval '1 minute'
  FROM numbered`;

/**
 * All at once instead of by a trigger for each, and with figures spread as beers are: lib/calc would take minutes for so
 * many, and search does not mind where they come from.
 */
const FILE = `
  INSERT INTO search_document (space_id, kind, id, title, keywords, body, style, author_id, changed_at, calc_version,
                               original_plato, colour_ebc, bitterness_ibu, alcohol_vol)
  SELECT ctx_space(), 'recipe', r.id, r.title, names_in(v.content -> 'recipe'), v.content ->> 'notes', v.content ->> 'style',
         v.author_id, v.created_at, 'bench', 8 + 10 * random(), 5 + 100 * random(), 10 + 70 * random(), 3 + 6 * random()
  FROM recipe r JOIN recipe_revision v ON v.space_id = r.space_id AND v.recipe_id = r.id
  WHERE r.space_id = ctx_space()`;

const WORDS = `
  INSERT INTO search_word SELECT ctx_space(), word FROM (
    SELECT DISTINCT unnest(tsvector_to_array(to_tsvector('gyle_plain', title || ' ' || keywords))) AS word
    FROM search_document WHERE space_id = ctx_space()) AS every WHERE length(word) BETWEEN 3 AND 40`;

const ASKED: Readonly<Record<string, Record<string, string>>> = {
  "a rare word": { q: "lanternbrook" },
  "a word and a number": { q: "harbourgate porter 3f" },
  "a common word (10 000)": { q: "porter" },
  "a word of all (100 000)": { q: "pale malt" },
  "a beginning": { q: "orchardf" },
  "a mistyped word": { q: "lanternbroook" },
  "two mistyped words": { q: "harborgate pilsener" },
  "words and figures": { q: "stout", volFrom: "5", volTo: "6", ibuFrom: "40" },
  "figures alone": { volFrom: "8.9", ebcTo: "20" },
  "a style": { style: "12A" },
  "nothing, the newest": {},
};

async function fill(member: Member): Promise<void> {
  const client = new Client({
    connectionString: environment.databaseUrl,
    options: `-c app.space_id=${member.spaceId} -c app.user_id=${member.userId}`,
  });
  await client.connect();
  await client.query("ALTER TABLE recipe_revision DISABLE TRIGGER file");
  await client.query(FILL, [0, RECIPES - 1, FIRST, SECOND, BEERS, HOPS]);
  await client.query("ALTER TABLE recipe_revision ENABLE TRIGGER file");
  for (const statement of [FILE, WORDS]) await client.query(statement);
  await client.query("VACUUM ANALYZE search_document, search_word, recipe");
  await client.end();
}

async function someMember(): Promise<Member> {
  const account = { email: `${randomUUID()}@example.org`, displayName: "Bench", passwordHash: "none" };
  const userId = await directory.$transaction((tx) => createAccount(tx, account));
  const viewer = await proveViewer(await openSession({ userId, userAgent: "bench" }));
  if (viewer === null) throw new Error("nobody is signed in");
  const slug = `bench-${randomUUID().slice(0, 8)}`;
  await foundClub(viewer, { name: "Bench club", slug });
  const member = await proveMember(viewer, slug);
  if (member === null) throw new Error("the club is not there");
  return member;
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const start = performance.now();
  await work();
  return performance.now() - start;
}

function percentile(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

function line(name: string, times: readonly number[]): string {
  return `${name.padEnd(38)} p50 ${percentile(times, 0.5).toFixed(1)} ms, p95 ${percentile(times, 0.95).toFixed(1)} ms`;
}

/** The plan that the function makes inside, which EXPLAIN does not show from outside; and what the policy alone would make. */
async function printPlans({ spaceId }: Member): Promise<void> {
  const client = new Client({ connectionString: environment.databaseUrl, options: `-c app.space_id=${spaceId}` });
  await client.connect();
  const statement = `EXPLAIN (ANALYZE, COSTS OFF, BUFFERS OFF, SUMMARY OFF) SELECT id FROM search_document d
    WHERE d.space_id = ctx_space() AND d.words @@ websearch_to_tsquery('gyle_plain', 'lanternbrook')
    ORDER BY d.changed_at DESC LIMIT 501`;
  // The scratch database's owner made the role and may let itself in, for as long as this takes.
  await client.query("GRANT gyle_finder TO CURRENT_USER");
  for (const role of ["gyle_finder", "gyle_app"]) {
    await client.query(`SET ROLE ${role}`);
    const { rows } = await client.query<{ "QUERY PLAN": string }>(statement);
    console.log(`\nPlan as ${role}:\n${rows.map((row) => `  ${row["QUERY PLAN"]}`).join("\n")}`);
    await client.query("RESET ROLE");
  }
  await client.query("REVOKE gyle_finder FROM CURRENT_USER");
  await client.end();
}

async function benchSearch(): Promise<void> {
  const member = await someMember();
  const filling = await timed(() => fill(member));
  console.log(`${RECIPES} recipes filed in ${(filling / 1000).toFixed(0)} s, ${SEARCH_KINDS.length} kinds searched`);
  const inputs = Object.entries(ASKED).map(([name, asked]) => [name, searchInput.parse(asked)] as const);
  const times = new Map<string, number[]>(inputs.map(([name]) => [name, []]));
  const bare: number[] = [];
  for (let round = -2; round < ROUNDS; round++) {
    for (const [name, input] of inputs) {
      const took = await timed(() => expectSome(member, name, input));
      const floor = await timed(() => inSpace(member.spaceId, member.userId, (tx) => tx.$queryRaw`SELECT 1`));
      if (round < 0) continue;
      times.get(name)?.push(took);
      bare.push(floor);
    }
  }
  console.log(line("bare query in a space", bare));
  for (const [name, taken] of times) console.log(line(name, taken));
  const all = [...times.values()].flat();
  const ratio = percentile(all, 0.5) / percentile(bare, 0.5);
  console.log(`${line("all searches", all)} = ${ratio.toFixed(1)} times the bare query`);
  await printPlans(member);
}

async function expectSome(member: Member, name: string, input: SearchInput): Promise<void> {
  const { hits } = await search(member, input);
  if (hits.length === 0) throw new Error(`${name} found nothing`);
}

try {
  await benchSearch();
} finally {
  await directory.$disconnect();
}
