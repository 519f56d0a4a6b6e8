/**
 * The recipe page against a bare page of the same app that asks the database for the same (page.bench.tsx), in one run:
 * what the numbers and the markup cost. The pages are asked for in turn, so that a slow moment falls on all of them.
 * The server and its database come from the environment (`npm run bench`).
 */
import { DEMO_CLUB, DEMO_PASSWORD, DEMO_PEOPLE } from "../../seed-demo/people";
import { directory } from "@/lib/server/db";
import { environment } from "@/lib/server/environment";
import { listRecipes } from "@/lib/server/recipes/list";
import { proveMember, proveViewer, type Member } from "@/lib/server/proof";
import { closeSession, openSession } from "@/lib/server/sessions/writes";

const ROUNDS = 120;
const WARM_UP = 20;

function percentile(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

async function timeOf(address: string, headers: Record<string, string>): Promise<number> {
  const start = performance.now();
  const answer = await fetch(address, { headers });
  await answer.text();
  if (answer.status !== 200) throw new Error(`${address} answered ${answer.status}`);
  return performance.now() - start;
}

/** The times of each address, in order of size. */
async function timed(addresses: readonly string[], headers: Record<string, string>): Promise<readonly number[][]> {
  const times = addresses.map((): number[] => []);
  for (let i = 0; i < WARM_UP + ROUNDS; i++) {
    for (const [at, address] of addresses.entries()) {
      const time = await timeOf(address, headers);
      if (i >= WARM_UP) times[at]?.push(time);
    }
  }
  return times.map((each) => each.sort((a, b) => a - b));
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
  try {
    const cookie = await signIn(origin);
    const home = `${origin}/s/${DEMO_CLUB.slug}/recipes/${recipe.id}`;
    const [bare = [], page = [], kettles = []] = await timed([`${home}/bare`, home, `${home}/kettles`], { cookie });
    const line = (name: string, times: readonly number[]): string =>
      `${name.padEnd(38)} p50 ${percentile(times, 0.5).toFixed(1)} ms, p95 ${percentile(times, 0.95).toFixed(1)} ms`;
    const ratio = percentile(page, 0.5) / percentile(bare, 0.5);
    console.log(line("bare page with the same queries", bare));
    console.log(`${line("recipe page", page)} = ${ratio.toFixed(1)} times the bare page`);
    console.log(line("all kettles (twelve adaptations)", kettles));
  } finally {
    await closeSession(reference);
    await directory.$disconnect();
  }
}

await benchPages();
