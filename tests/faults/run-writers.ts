// Run by lib/ops/faults-service.mjs, which does harm to what these writers talk to.
import { z } from "zod";
import { recipeContent } from "@/lib/model/recipe-content";
import { sessionCookie } from "@/lib/server/auth";
import { directory } from "@/lib/server/db";
import { createOrder } from "@/lib/server/orders/writes";
import { createRecipe } from "@/lib/server/recipes/writes";
import type { Member } from "@/lib/server/session";
import { openSession } from "@/lib/server/sessions/writes";
import { readActions } from "../bench/load/actions";
import { newBrewing, parsedRecipe } from "../support/brewing";
import { join, newAccount, TEST_PASSWORD } from "../support/club";
import { newJudging } from "../support/judging";
import { sampleContent } from "../support/sample-recipe";
import { startFlakyProxy } from "./flaky-proxy";
import { seededRandom } from "./random";
import { readingWriter, sheetWriter } from "./service/deliveries";
import { orderWriter } from "./service/orders";
import { recipeWriter, revisionWriter } from "./service/recipes";
import { draftWriter, signInWriter } from "./service/versions";
import type { Setting, Writer } from "./service/writer";

const setting = z
  .object({ seed: z.number(), ports: z.array(z.number()), proxyPort: z.number(), origin: z.string() })
  .parse(JSON.parse(process.env["GYLEBOOK_FAULTS"] ?? "{}"));

const message = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("lifted"), at: z.number() }),
  z.object({ kind: z.literal("slow"), ms: z.number() }),
  z.object({ kind: z.literal("quiet") }),
]);

const PAUSE_MS = { least: 100, more: 500 } as const;
const LONGEST_DRAIN_MS = 120_000;
const ORDER = { title: "Malt", sharedBrewId: null, currency: "EUR", closesAt: null, note: "" } as const;
/** Of each kind of write. */
const WRITERS = 2;

const random = seededRandom(setting.seed);
const state = { isQuiet: false, liftedAt: null as number | null, tries: 0 };

async function live(writer: Writer): Promise<void> {
  while (!state.isQuiet) {
    const begun = Date.now();
    state.tries += 1;
    const isKept = await writer.write();
    if (isKept && state.liftedAt !== null && begun >= state.liftedAt) {
      process.send?.({ kind: "recovered", ms: Date.now() - state.liftedAt });
      state.liftedAt = null;
    }
    // Signing in takes the processor on purpose.
    const slower = writer.kind === "sign-in" ? 6 : 1;
    await pause((PAUSE_MS.least + random() * PAUSE_MS.more) * slower);
  }
}

/** A club with everything that is written to, and two people for each kind of write. */
async function makeWriters(): Promise<readonly Writer[]> {
  const { organiser, judges, tastingId, entryNos } = await newJudging({ judges: WRITERS, state: "open" });
  const actionOf = await readActions();
  const cookieOf = (reference: string) => ({ cookie: `${sessionCookie()}=${reference}` });
  const shared: Setting = { origin: setting.origin, slug: organiser.spaceSlug, actionOf, cookieOf };
  const referenceOf = ({ userId }: Member): Promise<string> => openSession({ userId, userAgent: null });
  const content = recipeContent.parse(sampleContent());
  const writers: Writer[] = [];
  for (const judge of judges) {
    const member = await join(organiser, "member");
    const reference = await referenceOf(member);
    const holder = { member, reference };
    const { brewId } = await newBrewing(organiser, member);
    const { id: orderId } = await createOrder(organiser, ORDER);
    const { id: recipeId } = await createRecipe(member, parsedRecipe("Revised"));
    const entryNo = entryNos[0] ?? 0;
    writers.push(
      readingWriter(shared, { ...holder, brewId }),
      sheetWriter(shared, { member: judge, reference: await referenceOf(judge), tastingId, entryNo }),
      recipeWriter(shared, { ...holder, content }),
      revisionWriter(shared, { ...holder, content, recipeId }),
      draftWriter(shared, holder),
      orderWriter(shared, { ...holder, orderId }),
    );
  }
  writers.push(signInWriter(shared, { ...(await newAccount("Somebody")), password: TEST_PASSWORD }));
  return writers;
}

async function drain(writers: readonly Writer[]): Promise<boolean> {
  const until = Date.now() + LONGEST_DRAIN_MS;
  while (Date.now() < until) {
    const done = await Promise.all(writers.map(async (writer) => (await writer.drain?.()) ?? true));
    if (done.every(Boolean)) return true;
    await pause(500);
  }
  return false;
}

async function judge(writers: readonly Writer[]): Promise<readonly object[]> {
  const verdicts: object[] = [];
  for (const kind of new Set(writers.map((writer) => writer.kind))) {
    const sum = { kind, acknowledged: 0, lost: 0, doubled: 0, halfWritten: 0 };
    for (const writer of writers.filter((each) => each.kind === kind)) {
      const verdict = await writer.judge();
      for (const name of ["acknowledged", "lost", "doubled", "halfWritten"] as const) sum[name] += verdict[name];
    }
    verdicts.push(sum);
  }
  return verdicts;
}

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

const writers = await makeWriters();
const proxy = await startFlakyProxy({ port: setting.proxyPort, to: setting.ports, random });
process.on("message", (told) => {
  const parsed = message.parse(told);
  if (parsed.kind === "quiet") state.isQuiet = true;
  else if (parsed.kind === "slow") proxy.slow(parsed.ms);
  else state.liftedAt = parsed.at;
});
process.send?.({ kind: "writing" });
await Promise.all(writers.map(live));
proxy.calm();
const isDrained = await drain(writers);
const verdicts = await judge(writers);
process.send?.({ kind: "result", verdicts, isDrained, tries: state.tries, cuts: proxy.cuts() });
await proxy.close();
await directory.$disconnect();
