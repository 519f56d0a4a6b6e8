import { randomUUID } from "node:crypto";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { LogEvent } from "@/lib/model/log/log-event";
import { directory, inSpace } from "@/lib/server/db";
import { ingest } from "@/lib/server/log/ingest";
import { scheduleAlarms } from "@/lib/server/push/alarms";
import { dispatchAlarms } from "@/lib/server/push/dispatch";
import type { Member } from "@/lib/server/session";
import { sha256 } from "@/lib/server/tokens";
import { newBrewing } from "../../support/brewing";
import { join, newClub } from "../../support/club";
import { newBrowserKeys, openPush, servePush, type BrowserKeys, type PushService } from "../../support/push-service";
import { connectAs } from "../../support/sql-session";

let service: PushService;
let browsers: Map<string, BrowserKeys>;
beforeEach(async () => {
  vi.stubEnv("PUSH_LOCAL", "on");
  service = await servePush();
  browsers = new Map();
});
afterEach(async () => {
  vi.unstubAllEnvs();
  await service.stop();
});

const AGO = -5000;
const at = (ms: number) => new Date(Date.now() + ms).toISOString();

interface Spoken {
  readonly act?: "set" | "acknowledged" | "cleared";
  readonly saidAt?: number;
  readonly dueAt?: number;
  readonly offset?: number | null;
  readonly timer?: string;
}

/** An event of a timer as it is stored. */
function said(member: Member, brewId: string, spoken: Spoken = {}) {
  const { act = "set", saidAt = -60_000, dueAt = AGO, offset = null, timer = "hops-1" } = spoken;
  const event: LogEvent = {
    ...{ id: randomUUID(), brewId, deviceId: randomUUID(), deviceSeq: 1, occurredAt: at(saidAt) },
    ...{ kind: "timer", timer, act, label: "Add the hops", dueAt: act === "set" ? at(dueAt) : null, step: null },
  };
  return { event, actorId: member.userId, sentAt: null, clockOffsetMs: offset };
}

const schedule = ({ spaceId, userId }: Member, ...events: readonly ReturnType<typeof said>[]) =>
  inSpace(spaceId, userId, (tx) => scheduleAlarms(tx, spaceId, events));

const alarmsOf = ({ spaceId, userId }: Member) =>
  inSpace(spaceId, userId, (tx) => tx.alarmDue.findMany({ where: { spaceId } }));

/** What waits is due now. */
const hurry = ({ spaceId, userId }: Member) =>
  inSpace(spaceId, userId, (tx) =>
    tx.alarmDue.updateMany({ where: { spaceId, nextTryAt: { not: null } }, data: { nextTryAt: new Date(0) } }),
  );

async function newBrowser({ userId }: Member, path = `/${randomUUID()}`): Promise<string> {
  const keys = newBrowserKeys();
  const endpoint = `${service.origin}${path}`;
  const row = { p256dh: new Uint8Array(keys.p256dh), auth: new Uint8Array(keys.auth), endpointHash: sha256(endpoint) };
  await directory.pushSubscription.create({ data: { id: randomUUID(), userId, endpoint, ...row } });
  browsers.set(path, keys);
  return path;
}

const heard = () =>
  service.received.map(({ path, body }) => {
    const keys = browsers.get(path);
    return keys === undefined ? null : (JSON.parse(openPush(keys, body)) as Readonly<Record<string, string>>);
  });

async function clubWithBrew() {
  const club = await newClub("member");
  return { ...club, ...(await newBrewing(club.organiser, club.member)) };
}

describe("a timer that is due", () => {
  it("wakes the brewer’s browsers once, also when two processes look at the same time", async () => {
    const { member, brewId } = await clubWithBrew();
    const paths = [await newBrowser(member), await newBrowser(member)];
    await schedule(member, said(member, brewId));
    await Promise.all([dispatchAlarms(), dispatchAlarms(), dispatchAlarms()]);
    await dispatchAlarms();
    expect(service.received.map(({ path }) => path).sort()).toEqual([...paths].sort());
    expect(heard()[0]).toEqual({
      ...{ title: expect.any(String) as string, body: "Add the hops", tag: `${brewId} hops-1` },
      url: `/brew-day/${member.spaceSlug}/${brewId}`,
    });
    expect((await alarmsOf(member))[0]?.doneAt).toBeInstanceOf(Date);
  });

  it("wakes who helps and who set it, and nobody else: not the club, nor who has left it", async () => {
    const { organiser, member, brewId } = await clubWithBrew();
    const [helper, other, former] = [
      await join(organiser, "member"),
      await join(organiser, "member"),
      await join(organiser, "member"),
    ];
    const { spaceId } = organiser;
    await inSpace(spaceId, organiser.userId, (tx) =>
      tx.brewCollaborator.createMany({
        data: [helper, former].map(({ userId }) => ({ spaceId, brewId, userId })),
      }),
    );
    await directory.membership.update({
      where: { spaceId_userId: { spaceId, userId: former.userId } },
      data: { status: "left" },
    });
    const woken = [await newBrowser(member), await newBrowser(helper), await newBrowser(organiser)];
    await newBrowser(other);
    await newBrowser(former);
    await schedule(member, said(organiser, brewId));
    expect(await dispatchAlarms()).toBe(3);
    expect(service.received.map(({ path }) => path).sort()).toEqual([...woken].sort());
  });

  it("does not before its time", async () => {
    const { member, brewId } = await clubWithBrew();
    await newBrowser(member);
    await schedule(member, said(member, brewId, { dueAt: 60_000 }));
    expect(await dispatchAlarms()).toBe(0);
    await hurry(member);
    expect(await dispatchAlarms()).toBe(1);
  });

  it("wakes nobody a quarter of an hour later", async () => {
    const { member, brewId } = await clubWithBrew();
    await newBrowser(member);
    await schedule(member, said(member, brewId, { saidAt: -3_600_000, dueAt: -16 * 60_000 }));
    expect(await dispatchAlarms()).toBe(0);
    expect((await alarmsOf(member))[0]?.doneAt).toBeInstanceOf(Date);
  });

  it("is counted by the server’s clock where the phone’s is clearly wrong", async () => {
    const { member, brewId } = await clubWithBrew();
    // The phone is an hour behind: what it calls an hour ago is now.
    await schedule(member, said(member, brewId, { saidAt: -3_660_000, dueAt: -3_600_000, offset: 3_600_000 }));
    const [alarm] = await alarmsOf(member);
    expect(Math.abs((alarm?.dueAt?.getTime() ?? 0) - Date.now())).toBeLessThan(5000);
  });
});

describe("what is said of a timer", () => {
  it("comes with the delivery of a phone", async () => {
    const { member, brewId } = await clubWithBrew();
    await newBrowser(member);
    const { event } = said(member, brewId);
    const delivery = { space: member.spaceSlug, user: member.userId, sentAt: at(0), roundTripMs: 0, unsteady: [] };
    await ingest(member, { ...delivery, events: [event] });
    expect(await dispatchAlarms()).toBe(1);
    await ingest(member, { ...delivery, events: [event] });
    expect(await dispatchAlarms()).toBe(0);
  });

  it.each(["acknowledged", "cleared"] as const)("ends it when it is %s, in whatever order it comes", async (act) => {
    const { organiser, member, brewId } = await clubWithBrew();
    await newBrowser(member);
    const set = said(member, brewId);
    const over = said(member, brewId, { act, saidAt: -1000 });
    await schedule(member, over);
    await schedule(member, set);
    const { brewId: second } = await newBrewing(organiser, member);
    await schedule(member, said(member, second), said(member, second, { act, saidAt: -1000 }));
    expect(await dispatchAlarms()).toBe(0);
    expect((await alarmsOf(member)).map(({ dueAt }) => dueAt)).toEqual([null, null]);
  });

  it("sets it anew when it is set later again, and a repetition changes nothing", async () => {
    const { member, brewId } = await clubWithBrew();
    await newBrowser(member);
    const set = said(member, brewId);
    await schedule(member, set);
    await dispatchAlarms();
    await schedule(member, set);
    expect(await dispatchAlarms()).toBe(0);
    await schedule(member, said(member, brewId, { act: "acknowledged", saidAt: -3000 }));
    await schedule(member, said(member, brewId, { saidAt: -2000, dueAt: -1000 }));
    expect(await dispatchAlarms()).toBe(1);
  });

  it("ends it when its setting is void", async () => {
    const { member, brewId } = await clubWithBrew();
    await newBrowser(member);
    const set = said(member, brewId);
    await schedule(member, set);
    const { id: targetId } = set.event;
    const event: LogEvent = {
      ...{ id: randomUUID(), brewId, deviceId: randomUUID(), deviceSeq: 2, occurredAt: at(0) },
      ...{ kind: "void", targetId, seen: [], why: "" },
    };
    await inSpace(member.spaceId, member.userId, (tx) =>
      scheduleAlarms(tx, member.spaceId, [{ event, actorId: member.userId, sentAt: null, clockOffsetMs: null }]),
    );
    expect(await dispatchAlarms()).toBe(0);
  });
});

describe("a push service", () => {
  it("that says the browser is gone is not asked again", async () => {
    const { member, brewId } = await clubWithBrew();
    const gone = await newBrowser(member);
    const here = await newBrowser(member);
    service.answer(410, gone);
    await schedule(member, said(member, brewId));
    expect(await dispatchAlarms()).toBe(1);
    const left = await directory.pushSubscription.findMany({ where: { userId: member.userId } });
    expect(left.map(({ endpoint }) => endpoint)).toEqual([`${service.origin}${here}`]);
  });

  it("that has too much to do is asked again a few times, and whoever heard is left alone", async () => {
    const { member, brewId } = await clubWithBrew();
    const busy = await newBrowser(member);
    const here = await newBrowser(member);
    service.answer(503, busy);
    await schedule(member, said(member, brewId));
    for (let attempts = 1; attempts <= 6; attempts++) {
      await dispatchAlarms();
      // Not before its time.
      await dispatchAlarms();
      await hurry(member);
    }
    const paths = service.received.map(({ path }) => path);
    expect(paths.filter((path) => path === here)).toHaveLength(1);
    expect(paths.filter((path) => path === busy)).toHaveLength(4);
    expect((await alarmsOf(member))[0]?.doneAt).toBeInstanceOf(Date);
  });
});

describe("the question where alarms are due", () => {
  it("names spaces and shows nobody a line of them", async () => {
    const { member, brewId } = await clubWithBrew();
    await schedule(member, said(member, brewId));
    const app = await connectAs("gyle_app");
    const { rows } = await app.query<{ id: string }>("SELECT id FROM spaces_with_alarms() AS id");
    expect(rows.map(({ id }) => id)).toContain(member.spaceId);
    expect((await app.query("SELECT FROM alarm_due")).rows).toEqual([]);
    await app.end();
    await dispatchAlarms();
  });
});
