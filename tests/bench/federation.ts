/**
 * Makes two databases of one cluster out of the demo club's: one with a single club of the federation, one with all of
 * them. That club is the same in both, so that whatever is slower in the large one comes of the others.
 * What to make comes from the environment (`npm run load`); the demo club's database is the one at DATABASE_URL.
 */
import { Client } from "pg";
import { z } from "zod";
import { recipeContent } from "@/lib/model/recipe-content";
import { directory, inSpace } from "@/lib/server/db";
import { proveMember, proveViewer, type Member } from "@/lib/server/proof";
import { saveRevision } from "@/lib/server/recipes/writes";
import { fillFiguresOf } from "@/lib/server/search/figures";
import { openSession } from "@/lib/server/sessions/writes";
import { remakeStale } from "@/lib/server/summaries/stale";
import { DEMO_CLUB, DEMO_PEOPLE } from "@/seed-demo/people";
import { fillFederation, type Filled } from "./federation/fill";

const wanted = z
  .object({ superuserUrl: z.string(), clubs: z.number(), seed: z.number(), measured: z.number() })
  .parse(JSON.parse(process.env["GYLEBOOK_FEDERATION"] ?? "{}"));

/** Tables whose rows are told of. */
const TOLD = ["space", "app_user", "membership", "recipe", "recipe_revision", "search_document", "brew", "brew_event"];

async function organiser(): Promise<Member> {
  const { id: userId } = await directory.appUser.findUniqueOrThrow({
    where: { emailNorm: DEMO_PEOPLE[0]?.email ?? "" },
  });
  const viewer = await proveViewer(await openSession({ userId, userAgent: "bench" }));
  const member = viewer === null ? null : await proveMember(viewer, DEMO_CLUB.slug);
  if (member === null) throw new Error("there is no demo club");
  return member;
}

/** A second revision of each recipe, and everything made that the app makes by and by. */
async function completeTemplate(member: Member): Promise<void> {
  const { spaceId, userId } = member;
  const recipes = await inSpace(spaceId, userId, (tx) =>
    tx.recipe.findMany({
      select: {
        id: true,
        title: true,
        headRev: true,
        revisions: { select: { content: true }, orderBy: { rev: "desc" } },
      },
    }),
  );
  for (const { id, title, headRev, revisions } of recipes) {
    const content = { ...recipeContent.parse(revisions[0]?.content), notes: "Brewed and found good." };
    await saveRevision(member, { id, title, baseRev: headRev, content, message: "Notes" });
  }
  await fillFiguresOf(spaceId);
  await remakeStale(spaceId, 0);
}

async function fill(name: string, clubs: readonly number[]): Promise<Filled> {
  const administrator = new Client({ connectionString: wanted.superuserUrl.replace(/\/[^/]*$/, "/postgres") });
  await administrator.connect();
  await administrator.query(`CREATE DATABASE ${name} TEMPLATE gylebook OWNER gylebook`);
  await administrator.end();
  const superuserUrl = wanted.superuserUrl.replace(/\/[^/]*$/, `/${name}`);
  return fillFederation({ superuserUrl, clubs, seed: wanted.seed });
}

function tell(name: string, { rows, bytes, seconds }: Filled): void {
  const counts = TOLD.map((table) => `${table} ${(rows[table] ?? 0).toLocaleString("en-GB")}`).join(", ");
  const all = Object.values(rows).reduce((sum, count) => sum + count, 0);
  console.log(
    `${name}: ${all.toLocaleString("en-GB")} rows, ${(bytes / 1e6).toFixed(0)} MB, in ${seconds.toFixed(0)} s`,
  );
  console.log(`  ${counts}`);
}

await completeTemplate(await organiser());
await directory.$disconnect();
tell("Small", await fill("small", [wanted.measured]));
tell(
  "Large",
  await fill(
    "large",
    Array.from({ length: wanted.clubs }, (_, i) => i + 1),
  ),
);
