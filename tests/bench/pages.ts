/**
 * The recipe page against a bare page with the same queries, in one run: what the framework and the layout cost.
 * The server and its database come from the environment (`npm run bench`).
 */
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { DEMO_CLUB, DEMO_PASSWORD, DEMO_PEOPLE } from "../../seed-demo/people";
import { directory } from "@/lib/server/db";
import { environment } from "@/lib/server/environment";
import { listEquipment } from "@/lib/server/equipment/reads";
import { listRevisions } from "@/lib/server/recipes/list-revisions";
import { listRecipes } from "@/lib/server/recipes/list";
import { findRecipe } from "@/lib/server/recipes/reads";
import { proveMember, proveViewer, type Member } from "@/lib/server/proof";
import { closeSession, openSession } from "@/lib/server/sessions/writes";

const ROUNDS = 120;
const WARM_UP = 20;

function percentile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

async function timed(address: string, headers: Record<string, string>): Promise<readonly number[]> {
  const times: number[] = [];
  for (let i = 0; i < WARM_UP + ROUNDS; i++) {
    const start = performance.now();
    const answer = await fetch(address, { headers });
    await answer.text();
    if (answer.status !== 200) throw new Error(`${address} answered ${answer.status}`);
    if (i >= WARM_UP) times.push(performance.now() - start);
  }
  return times.sort((a, b) => a - b);
}

/** Signs in as a browser does, and returns the cookies. */
async function signIn(origin: string): Promise<string> {
  const csrf = await fetch(`${origin}/api/auth/csrf`);
  const { csrfToken } = (await csrf.json()) as { csrfToken: string };
  const first = csrf.headers.getSetCookie().map((cookie) => cookie.split(";")[0] ?? "");
  const answer = await fetch(`${origin}/api/auth/callback/credentials`, {
    method: "POST",
    redirect: "manual",
    headers: { cookie: first.join("; "), origin, "content-type": "application/x-www-form-urlencoded" },
    body: new URLSearchParams({ csrfToken, email: DEMO_PEOPLE[0]?.email ?? "", password: DEMO_PASSWORD, json: "true" }),
  });
  const cookies = answer.headers.getSetCookie().map((cookie) => cookie.split(";")[0] ?? "");
  if (answer.status >= 400) throw new Error(`signing in answered ${answer.status}`);
  return [...first, ...cookies].join("; ");
}

/** A page that asks the database for the same and says only that it did. */
async function bareServer(reference: string, recipeId: string): Promise<{ address: string; close: () => void }> {
  const server = createServer((_request, response) => {
    void (async () => {
      const member = await memberOf(reference);
      const recipe = await findRecipe(member, recipeId);
      const [kettles, revisions] = await Promise.all([listEquipment(member), listRevisions(member, recipeId)]);
      response.setHeader("content-type", "text/html; charset=utf-8");
      response.end(`<!doctype html><title>${recipe?.title ?? ""}</title>${kettles.length} ${revisions.length}`);
    })();
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  // A server that listens on a port has an address that is one.
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/`, close: () => server.close() };
}

async function memberOf(reference: string): Promise<Member> {
  const viewer = await proveViewer(reference);
  const member = viewer === null ? null : await proveMember(viewer, DEMO_CLUB.slug);
  if (member === null) throw new Error("the demo club is not there");
  return member;
}

async function benchPages(): Promise<void> {
  const origin = environment.appOrigin ?? "";
  const { id: userId } = await directory.appUser.findUniqueOrThrow({
    where: { emailNorm: DEMO_PEOPLE[0]?.email ?? "" },
  });
  const reference = await openSession({ userId, userAgent: "bench" });
  const [recipe] = await listRecipes(await memberOf(reference));
  if (recipe === undefined) throw new Error("the demo club has no recipe");
  const bare = await bareServer(reference, recipe.id);
  try {
    const cookie = await signIn(origin);
    const floor = await timed(bare.address, {});
    const page = await timed(`${origin}/s/${DEMO_CLUB.slug}/recipes/${recipe.id}`, { cookie });
    const kettles = await timed(`${origin}/s/${DEMO_CLUB.slug}/recipes/${recipe.id}/kettles`, { cookie });
    const line = (name: string, times: readonly number[]): string =>
      `${name.padEnd(38)} p50 ${percentile(times, 0.5).toFixed(1)} ms, p95 ${percentile(times, 0.95).toFixed(1)} ms`;
    const ratio = percentile(page, 0.5) / percentile(floor, 0.5);
    console.log(line("bare page with the same queries", floor));
    console.log(`${line("recipe page", page)} = ${ratio.toFixed(1)} times the bare page`);
    console.log(line("all kettles (twelve adaptations)", kettles));
  } finally {
    bare.close();
    await closeSession(reference);
    await directory.$disconnect();
  }
}

await benchPages();
