// Run by lib/ops/faults.mjs, which kills what these phones talk to.
import "fake-indexeddb/auto";
import { randomUUID } from "node:crypto";
import { z } from "zod";
import { createAccount } from "@/lib/server/accounts/create-account";
import { directory, inSpace } from "@/lib/server/db";
import { proveMember, proveViewer, type Member } from "@/lib/server/proof";
import { openSession } from "@/lib/server/sessions/writes";
import { foundClub } from "@/lib/server/spaces/writes";
import { sessionCookie } from "@/lib/server/auth";
import { newBrewing } from "../support/brewing";
import { startFlakyProxy } from "./flaky-proxy";
import { Phone, type Tally } from "./phone";
import { seededRandom } from "./random";

const setting = z
  .object({
    readings: z.number(),
    phones: z.number(),
    seed: z.number(),
    port: z.number(),
    proxyPort: z.number(),
    origin: z.string(),
  })
  .parse(JSON.parse(process.env["GYLEBOOK_FAULTS"] ?? "{}"));

const message = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("killed"), what: z.string(), at: z.number() }),
  z.object({ kind: z.literal("quiet") }),
]);

const AT_ONCE = 4;
const RELOAD_SHARE = 0.02;
const PAUSE_MS = { least: 60, more: 500 } as const;
const LONGEST_DRAIN_MS = 120_000;

const random = seededRandom(setting.seed);
const tally: Tally = {
  created: new Map(),
  safe: new Set(),
  deliveries: 0,
  repeats: 0,
  duplicates: 0,
  reloads: 0,
  lastSafeAt: 0,
};
const state = { isQuiet: false, unrecovered: [] as number[], recoveries: [] as number[] };

process.on("message", (told) => {
  const parsed = message.parse(told);
  if (parsed.kind === "quiet") state.isQuiet = true;
  else state.unrecovered.push(parsed.at);
});

const proxy = await startFlakyProxy({ port: setting.proxyPort, to: setting.port, random });
const club = await foundOne();
const phones = await openPhones(club);
process.send?.({ kind: "writing" });
await Promise.all(phones.map(live));
const quietAt = Date.now();
proxy.calm();
for (const phone of phones) phone.calm();
await drain();
const drainMs = Date.now() - quietAt;
process.send?.({ kind: "result", drainMs, ...(await judge()) });
await proxy.close();

async function foundOne(): Promise<Member> {
  const slug = `club-${randomUUID().slice(0, 8)}`;
  const founder = await newPerson("Olga Organiser");
  const viewer = required(await proveViewer(founder.reference));
  await foundClub(viewer, { name: "Test club", slug });
  return required(await proveMember(viewer, slug));
}

/** Two phones for each brew, both of its brewer. */
async function openPhones(organiser: Member): Promise<readonly Phone[]> {
  const opened: Phone[] = [];
  for (let i = 0; i < setting.phones; i += 2) {
    const { member, reference } = await newMember(organiser);
    const { brewId } = await newBrewing(organiser, member);
    for (const device of ["one", "other"].slice(0, setting.phones - i)) {
      const name = `phone-${String(i)}-${device}-${randomUUID()}`;
      const { spaceSlug: space, userId } = member;
      const { origin, proxyPort } = setting;
      const cookie = `${sessionCookie()}=${reference}`;
      opened.push(await Phone.open({ name, space, brewId, userId, cookie, origin, proxyPort, random }, tally));
    }
  }
  return opened;
}

/** Somebody new, signed in; nobody signs in by the form here, so the password is none. */
async function newPerson(displayName: string): Promise<{ readonly userId: string; readonly reference: string }> {
  const account = { email: `${randomUUID()}@example.org`, displayName, passwordHash: "no password" };
  const userId = await directory.$transaction((tx) => createAccount(tx, account));
  return { userId, reference: await openSession({ userId, userAgent: null }) };
}

async function newMember(organiser: Member): Promise<{ readonly member: Member; readonly reference: string }> {
  const { userId, reference } = await newPerson("Some member");
  await directory.membership.create({ data: { spaceId: organiser.spaceId, userId, role: "member" } });
  const viewer = required(await proveViewer(reference));
  return { member: required(await proveMember(viewer, organiser.spaceSlug)), reference };
}

function required<T>(value: T | null): T {
  if (value === null) throw new Error("the run's own set-up failed");
  return value;
}

/** Writes, sends, and is loaded anew now and then, until enough was written and the faults are over. */
async function live(phone: Phone): Promise<void> {
  while (!state.isQuiet || tally.created.size < setting.readings) {
    const isEnough = tally.created.size >= setting.readings * 1.5;
    const values = Array.from({ length: 1 + Math.floor(random() * AT_ONCE) }, () => Math.round(random() * 1000) / 10);
    if (!isEnough) await phone.write(values);
    const sending = phone.send();
    if (random() < RELOAD_SHARE) await phone.reload();
    await sending;
    noteRecovery();
    await pause(PAUSE_MS.least + random() * PAUSE_MS.more);
  }
}

/** A kill is overcome when the next reading is acknowledged. */
function noteRecovery(): void {
  const [at] = state.unrecovered;
  if (at === undefined || tally.lastSafeAt <= at) return;
  state.unrecovered.shift();
  state.recoveries.push(tally.lastSafeAt - at);
}

async function drain(): Promise<void> {
  const begun = Date.now();
  while (Date.now() - begun < LONGEST_DRAIN_MS) {
    await Promise.all(phones.map((phone) => phone.send()));
    const waiting = await Promise.all(phones.map((phone) => phone.waiting()));
    if (waiting.every((ids) => ids.length === 0)) return;
    await pause(200);
  }
}

/** Counts what is on the server against what the phones have shown. */
async function judge(): Promise<Readonly<Record<string, number>>> {
  const rows = await inSpace(
    club.spaceId,
    club.userId,
    (tx) => tx.$queryRaw<{ id: string; value: number; count: bigint }[]>`
      SELECT id::text, min(value) AS value, count(*) FROM brew_event GROUP BY id`,
  );
  const stored = new Map(rows.map(({ id, value }) => [id, value]));
  const waiting = new Set((await Promise.all(phones.map((phone) => phone.waiting()))).flat());
  const created = [...tally.created.keys()];
  const recoveries = [...state.recoveries].sort((a, b) => a - b);
  return {
    created: created.length,
    safe: tally.safe.size,
    stored: stored.size,
    cuts: proxy.cuts(),
    reloads: tally.reloads,
    deliveries: tally.deliveries,
    repeats: tally.repeats,
    duplicates: tally.duplicates,
    lost: [...tally.safe].filter((id) => !stored.has(id)).length,
    doubled: rows.filter(({ count }) => Number(count) !== 1).length,
    altered: [...stored].filter(([id, value]) => tally.created.get(id) !== value).length,
    stranded: created.filter((id) => !stored.has(id) && !waiting.has(id)).length + waiting.size,
    recoveryMedianMs: recoveries[Math.floor(recoveries.length / 2)] ?? 0,
    recoveryLongestMs: recoveries.at(-1) ?? 0,
  };
}

function pause(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}
