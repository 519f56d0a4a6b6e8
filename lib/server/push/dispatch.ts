import "server-only";
import { NOBODY } from "../nobody";
import type { PushPayload } from "@/lib/model/push/push-input";
import { acrossServers, directory, inSpace } from "../db";
import { pushKeys } from "./keys";
import { sendPush } from "./send";

/** For so long an alarm belongs to the sender who took it; after that it is anybody's again. */
const LEASE_S = 60;
const FIRST_WAIT_S = 15;
const MOST_ATTEMPTS = 4;
/** Later than that it wakes nobody: the brewer has long looked, or the server was away. */
const STALE_MS = 15 * 60_000;

interface Claimed {
  readonly brewId: string;
  readonly timer: string;
  readonly eventId: string;
  readonly actorId: string;
  readonly label: string;
  readonly dueAt: Date;
  readonly attempts: number;
  readonly reached: readonly string[];
}

/**
 * Wakes the browsers of those at a brew whose timers are due in any space, and says how many were reached. Any number of
 * processes may do so at once: each alarm is taken by one of them for a while, and no transaction stays open while it is
 * on its way.
 */
export async function dispatchAlarms(): Promise<number> {
  const due = await acrossServers(
    (client) => client.$queryRaw<{ readonly id: string }[]>`SELECT id FROM spaces_with_alarms() AS id`,
  );
  let reached = 0;
  for (const { id } of due) {
    for (let alarm = await claim(id); alarm !== null; alarm = await claim(id)) reached += await deliver(id, alarm);
  }
  return reached;
}

async function claim(spaceId: string): Promise<Claimed | null> {
  const [row] = await inSpace(
    spaceId,
    NOBODY,
    (tx) => tx.$queryRaw<Claimed[]>`
      UPDATE alarm_due SET attempts = attempts + 1,
                           next_try_at = clock_timestamp() + make_interval(secs => ${LEASE_S}::float8)
      WHERE (space_id, brew_id, timer) = (
        SELECT space_id, brew_id, timer FROM alarm_due
        WHERE space_id = ${spaceId}::uuid AND done_at IS NULL AND next_try_at <= clock_timestamp()
        ORDER BY next_try_at LIMIT 1
        FOR UPDATE SKIP LOCKED)
      RETURNING brew_id::text AS "brewId", timer, event_id::text AS "eventId", actor_id::text AS "actorId", label,
                due_at AS "dueAt", attempts, reached::text[] AS reached`,
  );
  return row ?? null;
}

async function deliver(spaceId: string, alarm: Claimed): Promise<number> {
  const isStale = Date.now() - alarm.dueAt.getTime() > STALE_MS;
  const targets = isStale ? [] : await targetsOf(spaceId, alarm);
  const payload = isStale ? null : await payloadOf(spaceId, alarm);
  const reached: string[] = [];
  const over: string[] = [];
  if (payload !== null && targets.length > 0) {
    const keys = await pushKeys();
    for (const target of targets) {
      const outcome = await sendPush(target, payload, keys);
      if (outcome === "gone") await directory.pushSubscription.deleteMany({ where: { id: target.id } });
      if (outcome === "sent") reached.push(target.id);
      if (outcome !== "later") over.push(target.id);
    }
  }
  const isDone = over.length === targets.length || alarm.attempts >= MOST_ATTEMPTS;
  await settle(spaceId, alarm, { isDone, over });
  return reached.length;
}

async function settle(
  spaceId: string,
  alarm: Claimed,
  { isDone, over }: { readonly isDone: boolean; readonly over: readonly string[] },
): Promise<void> {
  const waitS = FIRST_WAIT_S * 2 ** (alarm.attempts - 1);
  // A timer that was set anew while this was on its way is another alarm.
  await inSpace(
    spaceId,
    NOBODY,
    (tx) => tx.$executeRaw`
      UPDATE alarm_due
      SET reached = reached || ${[...over]}::uuid[],
          done_at = CASE WHEN ${isDone} THEN clock_timestamp() END,
          next_try_at = CASE WHEN due_at IS NOT NULL
                        THEN clock_timestamp() + make_interval(secs => ${waitS}::float8) END
      WHERE space_id = ${spaceId}::uuid AND brew_id = ${alarm.brewId}::uuid AND timer = ${alarm.timer}
        AND event_id = ${alarm.eventId}::uuid`,
  );
}

/** The browsers of whoever brews this, helps, or set the timer, as far as they belong to the club now. */
async function targetsOf(spaceId: string, { brewId, actorId, reached }: Claimed) {
  const brew = await inSpace(spaceId, NOBODY, (tx) =>
    tx.brew.findUnique({
      where: { spaceId_id: { spaceId, id: brewId } },
      select: { brewerUserId: true, collaborators: { select: { userId: true } } },
    }),
  );
  const people = [actorId, brew?.brewerUserId ?? actorId, ...(brew?.collaborators ?? []).map(({ userId }) => userId)];
  const members = await directory.membership.findMany({
    where: { spaceId, userId: { in: people }, status: "active" },
    select: { userId: true },
  });
  return directory.pushSubscription.findMany({
    where: {
      userId: { in: members.map(({ userId }) => userId) },
      user: { disabledAt: null },
      id: { notIn: [...reached] },
    },
    select: { id: true, endpoint: true, p256dh: true, auth: true },
  });
}

async function payloadOf(spaceId: string, { brewId, timer, label }: Claimed): Promise<PushPayload | null> {
  const space = await directory.space.findFirst({ where: { id: spaceId, deletedAt: null }, select: { slug: true } });
  const brew = await inSpace(spaceId, NOBODY, (tx) =>
    tx.brew.findUnique({ where: { spaceId_id: { spaceId, id: brewId } }, select: { title: true } }),
  );
  if (space === null || brew === null) return null;
  return { title: brew.title, body: label, url: `/brew-day/${space.slug}/${brewId}`, tag: `${brewId} ${timer}` };
}
