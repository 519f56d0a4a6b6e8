import { randomUUID } from "node:crypto";
import type { Client } from "pg";
import { afterEach, describe, expect, it } from "vitest";
import { directory } from "@/lib/server/db";
import { watchedBrews } from "@/lib/server/live/brew-feed";
import { endLiveStreams, liveStream, type LiveRequest } from "@/lib/server/live/live-stream";
import { readPlace } from "@/lib/server/live/new-entries";
import { postReadings } from "@/lib/server/sensors/post-readings";
import { proveMember, proveViewer, type Member } from "@/lib/server/session";
import { closeSession, openSession } from "@/lib/server/sessions/writes";
import { newBrewing } from "../../support/brewing";
import { newClub } from "../../support/club";
import { eventRow } from "../../support/content-rows";
import { readLive, type LiveReader } from "../../support/live-reader";
import { newSender, sentReading } from "../../support/sensors";
import { connectAs, insert } from "../../support/sql-session";

const readers: LiveReader[] = [];
afterEach(async () => {
  await Promise.all(readers.splice(0).map((reader) => reader.stop()));
  expect(watchedBrews()).toBe(0);
});

async function clubWithBrew() {
  const club = await newClub("member");
  const { brewId } = await newBrewing(club.organiser, club.member);
  return { ...club, brewId, key: { spaceId: club.member.spaceId, brewId } };
}

function watch(key: LiveRequest["key"], change: Partial<LiveRequest> = {}): LiveReader {
  const asked = { key, since: null, mayLook: () => Promise.resolve(true), signal: new AbortController().signal };
  const reader = readLive(liveStream({ ...asked, ...change }));
  readers.push(reader);
  return reader;
}

/** As another process would write it, with its own connection. */
async function write(client: Client, { userId, spaceId }: Member, brewId: string): Promise<string> {
  const row = eventRow({ space_id: spaceId, id: brewId }, userId);
  const payload = {
    ...(row.payload as object),
    sd: 0.2,
    instrument: "hydrometer",
    sampleC: 20,
    note: "",
    entered: "20 °P",
  };
  await insert(client, "brew_event", { ...row, payload });
  return row.id as string;
}

const told = (count: number) => (reader: LiveReader) => reader.until(() => reader.ids().length >= count);

describe("a live view", () => {
  it("tells what is written by whichever process, to everybody who watches, with one who asks", async () => {
    const { member, brewId, key } = await clubWithBrew();
    const [first, second] = [watch(key), watch(key)];
    expect(watchedBrews()).toBe(1);
    const client = await connectAs("gyle_app", member);
    const ids = [await write(client, member, brewId), await write(client, member, brewId)];
    await client.end();
    await Promise.all([first, second].map(told(2)));
    expect(first.ids()).toEqual(ids);
    expect(second.ids()).toEqual(ids);
    const [event] = first.events.filter((each) => each.event === "entry");
    expect(JSON.parse(event?.data ?? "")).toMatchObject({ actorId: member.userId, actorName: "Some member" });
  });

  it("tells nothing of another brew, nor of another club", async () => {
    const { organiser, member, brewId, key } = await clubWithBrew();
    const { brewId: other } = await newBrewing(organiser, member);
    const reader = watch(key);
    const stranger = watch({ spaceId: (await newClub()).organiser.spaceId, brewId });
    const client = await connectAs("gyle_app", member);
    await write(client, member, other);
    const id = await write(client, member, brewId);
    await client.end();
    await told(1)(reader);
    expect(reader.ids()).toEqual([id]);
    expect(stranger.ids()).toEqual([]);
  });

  it("tells also what is committed after something that was received later", async () => {
    const { member, brewId, key } = await clubWithBrew();
    const [slow, quick] = [await connectAs("gyle_app", member), await connectAs("gyle_app", member)];
    const reader = watch(key);
    await slow.query("BEGIN");
    const early = await write(slow, member, brewId);
    const late = await write(quick, member, brewId);
    await told(1)(reader);
    expect(reader.ids()).toEqual([late]);
    await slow.query("COMMIT");
    await told(2)(reader);
    expect(reader.ids()).toEqual([late, early]);
    await slow.end();
    await quick.end();
  });

  it("goes on where it was when its reader comes again: nothing is missed", async () => {
    const { member, brewId, key } = await clubWithBrew();
    const client = await connectAs("gyle_app", member);
    const before = watch(key);
    const ids = [await write(client, member, brewId)];
    await told(1)(before);
    const lastId = before.lastId();
    await before.stop();
    ids.push(await write(client, member, brewId), await write(client, member, brewId));
    const after = watch(key, { since: readPlace(lastId) });
    ids.push(await write(client, member, brewId));
    await told(4)(after);
    expect([...new Set([...before.ids(), ...after.ids()])]).toEqual(ids);
    // A minute later it would not be told of what it has.
    const since = readPlace(new Date(Date.now() + 60_000).toISOString());
    expect(watch(key, { since }).ids()).toEqual([]);
    await client.end();
  });

  it("tells thousands that come at once, each", async () => {
    const { member, brewId, key } = await clubWithBrew();
    const reader = watch(key);
    const sender = await newSender(member);
    const readings = Array.from({ length: 1700 }, (_, minute) => sentReading(brewId, minute));
    await postReadings(sender, readings, new Date());
    await told(1700)(reader);
    const again = watch(key, { since: readPlace("2026-01-01T00:00:00Z") });
    await told(1700)(again);
    expect(reader.ids()).toHaveLength(1700);
  });

  it("has a reader who missed very much read the log anew", async () => {
    const { member, brewId, key } = await clubWithBrew();
    const sender = await newSender(member);
    const readings = Array.from({ length: 4500 }, (_, minute) => sentReading(brewId, minute));
    await postReadings(sender, readings, new Date());
    const reader = watch(key, { since: readPlace("2026-01-01T00:00:00Z") });
    await reader.until((events) => events.some(({ event }) => event === "reload"));
    expect(reader.ids()).toHaveLength(4000);
    const client = await connectAs("gyle_app", member);
    const id = await write(client, member, brewId);
    await client.end();
    await reader.until(() => reader.ids().includes(id));
  });

  it("beats while its reader may look, and is over at the next beat after", async () => {
    const { member, key } = await clubWithBrew();
    const reference = await openSession({ userId: member.userId, userAgent: null });
    const mayLook = async () => {
      const viewer = await proveViewer(reference);
      return viewer !== null && (await proveMember(viewer, member.spaceSlug)) !== null;
    };
    const beats = (reader: LiveReader) => reader.events.filter(({ event }) => event === "beat").length;
    const signedOut = watch(key, { mayLook, beatMs: 100 });
    await signedOut.until(() => beats(signedOut) >= 2);
    await closeSession(reference);
    await signedOut.ended;
    expect(signedOut.events.at(-1)?.event).toBe("over");

    const { spaceId, userId } = member;
    const stillIn = { where: { spaceId_userId: { spaceId, userId } } };
    const left = watch(key, {
      beatMs: 100,
      mayLook: async () => (await proveMember(member, member.spaceSlug)) !== null,
    });
    await left.until(() => beats(left) >= 1);
    await directory.membership.update({ ...stillIn, data: { status: "left" } });
    await left.ended;
    expect(left.events.at(-1)?.event).toBe("over");
  });

  it("is over where nobody can say whether its reader may look", async () => {
    const { key } = await clubWithBrew();
    const reader = watch(key, { beatMs: 50, mayLook: () => Promise.reject(new Error("the database is away")) });
    await reader.ended;
    expect(reader.events).toEqual([]);
  });

  it("ends with its reader, and with the server", async () => {
    const { key } = await clubWithBrew();
    const gone = new AbortController();
    const [first, second] = [watch(key, { signal: gone.signal }), watch(key)];
    await new Promise((waited) => setTimeout(waited, 50));
    gone.abort();
    await first.ended;
    expect(watchedBrews()).toBe(1);
    endLiveStreams();
    await second.ended;
    expect(watchedBrews()).toBe(0);
  });
});

describe("a place in a log", () => {
  it.each(["", "yesterday", "2026-13-01T00:00:00Z", "2026-01-01T00:00:00Z' OR true", null])("is not %j", (text) => {
    expect(readPlace(text)).toBeNull();
  });

  it("is a time of receipt", () => {
    expect(readPlace("2026-11-28T10:00:00.123456Z")?.at).toBe("2026-11-28T10:00:00.123456Z");
    expect(readPlace(`2026-11-28T10:00:00.123Z`)?.id).toHaveLength(randomUUID().length);
  });
});
