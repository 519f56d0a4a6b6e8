import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { POST } from "@/app/api/v1/readings/route";
import { GET } from "@/app/api/v1/brews/[brew]/readings/route";
import { readingsAnswer } from "@/lib/model/sensor/readings-answer";
import { readingsPage } from "@/lib/model/sensor/readings-page";
import { inSpace } from "@/lib/server/db";
import { ingest } from "@/lib/server/log/ingest";
import { revokeSensorKey, listSensorKeys } from "@/lib/server/sensors/tokens";
import type { Member } from "@/lib/server/session";
import { takeTurn } from "@/lib/server/throttle";
import { newBrewing } from "../../support/brewing";
import { join, newClub } from "../../support/club";
import { newKey, sentBy, sentReading } from "../../support/sensors";

async function clubWithBrew() {
  const club = await newClub("member");
  return { ...club, ...(await newBrewing(club.organiser, club.member)) };
}

const countIn = ({ spaceId, userId }: Member) =>
  inSpace(spaceId, userId, (tx) => tx.brewEvent.count({ where: { spaceId } }));

async function post(
  token: string | null,
  readings: readonly unknown[],
  headers: Readonly<Record<string, string>> = {},
) {
  const response = await POST(sentBy(token, { readings }, headers), undefined);
  return { status: response.status, body: (await response.json()) as unknown, headers: response.headers };
}

async function readBack(token: string, brew: string, query = ""): Promise<Response> {
  const request = new Request(`http://localhost:3000/api/v1/brews/${brew}/readings${query}`, {
    headers: { authorization: `Bearer ${token}` },
  });
  return GET(request, { params: Promise.resolve({ brew }) });
}

describe("readings of a sensor", () => {
  it("are stored once, however often and by whatever batch they are sent", async () => {
    const { member, brewId } = await clubWithBrew();
    const token = await newKey(member);
    const readings = [0, 1, 2].map((minute) => sentReading(brewId, minute));
    const first = await post(token, readings);
    expect(first.status).toBe(200);
    expect(readingsAnswer.parse(first.body)).toMatchObject({ stored: 3, duplicate: 0, rejected: 0 });
    const again = await post(token, [...readings.slice(1), sentReading(brewId, 3)]);
    expect(readingsAnswer.parse(again.body)).toMatchObject({ stored: 1, duplicate: 2, rejected: 0 });
    const answers = await Promise.all(Array.from({ length: 5 }, () => post(token, [sentReading(brewId, 9)])));
    expect(answers.map(({ body }) => readingsAnswer.parse(body).stored).sort()).toEqual([0, 0, 0, 0, 1]);
    expect(await countIn(member)).toBe(5);
  });

  it("may bring identifiers, by which another value is refused and never kept", async () => {
    const { member, brewId } = await clubWithBrew();
    const token = await newKey(member);
    const id = randomUUID();
    await post(token, [sentReading(brewId, 0, { id })]);
    const { body } = await post(token, [
      sentReading(brewId, 0, { id }),
      sentReading(brewId, 0, { id, value: 25 }),
      sentReading(brewId, 5, { id: randomUUID() }),
    ]);
    expect(readingsAnswer.parse(body).results).toEqual([
      { index: 0, id, fate: "duplicate" },
      { index: 1, id, fate: "rejected", reason: "Another reading of this request has the same identifier." },
      { index: 2, id: expect.any(String) as string, fate: "stored" },
    ]);
    const { body: alone } = await post(token, [sentReading(brewId, 0, { id, value: 25 })]);
    expect(readingsAnswer.parse(alone).results[0]?.reason).toContain("with this identifier is in the log already");
    expect(await countIn(member)).toBe(2);
  });

  it("are answered for one by one: those that are right are kept beside those that are not", async () => {
    const { member, brewId } = await clubWithBrew();
    const token = await newKey(member);
    const { status, body } = await post(token, [
      sentReading(brewId, 0),
      sentReading(brewId, 1, { value: 900 }),
      { nonsense: true },
      sentReading(randomUUID(), 2),
    ]);
    expect(status).toBe(200);
    const { results, ...counts } = readingsAnswer.parse(body);
    expect(counts).toEqual({ stored: 1, duplicate: 0, rejected: 3 });
    expect(results[1]?.reason).toBe("value 900 °C: Temperature in the fermenter takes -10 to 60 °C");
    expect(results[2]?.reason).toContain("quantity is missing");
    expect(results[3]?.reason).toBe("There is no such brew here.");
  });

  it("come back in the order in which they came, page by page, with what became of them", async () => {
    const { member, brewId } = await clubWithBrew();
    const token = await newKey(member);
    const given = [0, 1, 2, 3, 4].map((minute) => sentReading(brewId, minute, { value: 18 + minute, note: "shelf" }));
    for (const reading of given) await post(token, [reading]);
    await post(token, [sentReading(brewId, 0, { quantity: "mash.ph", value: 5.4, unit: "pH" })]);
    const first = readingsPage.parse(await (await readBack(token, brewId, "?limit=3")).json());
    expect(first.readings.map(({ value }) => value)).toEqual([18, 19, 20]);
    expect(first.readings[0]).toMatchObject({
      at: "2026-03-14T10:00:00.000Z",
      unit: "°C",
      sd: 0.5,
      note: "shelf",
      void: false,
    });
    const [, , third] = first.readings;
    const stamp = { brewId, deviceId: randomUUID(), occurredAt: "2026-03-14T12:00:00Z", seen: [] };
    const measured = {
      ...{ kind: "temperature", quantity: "fermenter.temperature", value: 20.4, sd: 0.1, instrument: "thermometer" },
      ...{ sampleC: null, note: "", entered: "20.4", step: null },
    };
    const events = [
      { ...stamp, id: randomUUID(), deviceSeq: 1, kind: "correct", targetId: third?.id, measured },
      {
        ...stamp,
        id: randomUUID(),
        deviceSeq: 2,
        kind: "void",
        targetId: first.readings[0]?.id,
        why: "out of the beer",
      },
    ];
    const { rejected } = await ingest(member, {
      ...{
        space: member.spaceSlug,
        user: member.userId,
        sentAt: new Date().toISOString(),
        roundTripMs: 0,
        unsteady: [],
        events,
      },
    });
    expect(rejected).toEqual([]);
    const pages = [readingsPage.parse(await (await readBack(token, brewId, "?limit=3")).json())];
    for (let next = pages[0]?.next ?? null; next !== null; next = pages.at(-1)?.next ?? null) {
      pages.push(readingsPage.parse(await (await readBack(token, brewId, `?limit=3&after=${next}`)).json()));
    }
    const all = pages.flatMap(({ readings }) => readings);
    expect(all.map(({ value }) => value)).toEqual([18, 19, 20.4, 21, 22, 5.4]);
    expect(all.map((reading) => [reading.corrected, reading.void]).slice(0, 3)).toEqual([
      [false, true],
      [false, false],
      [true, false],
    ]);
    const acid = readingsPage.parse(await (await readBack(token, brewId, "?quantity=mash.ph")).json());
    expect(acid.readings.map(({ value }) => value)).toEqual([5.4]);
  });
});

describe("readings that are refused as a whole", () => {
  it("have no key, an altered one, one that was revoked, or a cookie in its place", async () => {
    const { member, brewId } = await clubWithBrew();
    const token = await newKey(member);
    const [key] = await listSensorKeys(member);
    const readings = [sentReading(brewId)];
    const altered = `${token.slice(0, -1)}${token.endsWith("A") ? "B" : "A"}`;
    for (const wrong of [null, altered, "gyle_", `x${token}`]) expect((await post(wrong, readings)).status).toBe(401);
    const cookie = { cookie: `gylebook.session=${token}`, authorization: `Basic ${token}` };
    expect((await post(null, readings, cookie)).status).toBe(401);
    await revokeSensorKey(member, key?.id ?? "");
    const replayed = await post(token, readings);
    expect(replayed.status).toBe(401);
    expect(replayed.headers.get("www-authenticate")).toContain("Bearer");
    expect((await readBack(token, brewId)).status).toBe(401);
    expect(await countIn(member)).toBe(0);
  });

  it("are for a brew of another club, which is none", async () => {
    const { member, brewId } = await clubWithBrew();
    const { organiser: outsider } = await newClub();
    const token = await newKey(outsider);
    expect((await post(token, [sentReading(brewId)])).status).toBe(404);
    expect((await readBack(token, brewId)).status).toBe(404);
    expect((await readBack(token, randomUUID())).status).toBe(404);
    expect(await countIn(member)).toBe(0);
  });

  it("are for a brew that the maker of the key may only read, or the key is not for", async () => {
    const { organiser, member, brewId } = await clubWithBrew();
    const other = await join(organiser, "member");
    const token = await newKey(other);
    expect((await post(token, [sentReading(brewId)])).status).toBe(403);
    expect((await readBack(token, brewId)).status).toBe(200);
    const { brewId: second } = await newBrewing(organiser, member);
    const forSecond = await newKey(member, second);
    const { status, body } = await post(forSecond, [sentReading(brewId)]);
    expect(status).toBe(400);
    expect(readingsAnswer.parse(body).results[0]?.reason).toContain("this key is for the brew");
    expect((await readBack(forSecond, brewId)).status).toBe(404);
    const { brew: _left, ...unnamed } = sentReading(brewId);
    expect(readingsAnswer.parse((await post(forSecond, [unnamed])).body).stored).toBe(1);
    expect(await countIn(member)).toBe(1);
  });

  it("are too many, too long, or no JSON", async () => {
    const { member, brewId } = await clubWithBrew();
    const token = await newKey(member);
    const many = Array.from({ length: 1001 }, (_, minute) => sentReading(brewId, minute));
    const refused = await post(token, many);
    expect(refused).toMatchObject({
      status: 413,
      body: { message: "readings: there are 1001; a request takes 1 to 1000. Nothing was kept." },
    });
    const answers = [
      await POST(sentBy(token, "{"), undefined),
      await POST(sentBy(token, "[]"), undefined),
      await POST(sentBy(token, { readings: [] }), undefined),
      await POST(sentBy(token, "x".repeat(600_000)), undefined),
      await POST(sentBy(token, "<readings/>", { "content-type": "application/xml" }), undefined),
    ];
    expect(answers.map(({ status }) => status)).toEqual([400, 400, 400, 413, 400]);
    expect(await countIn(member)).toBe(0);
  });

  it("come too often with one key, and those of another one are taken", async () => {
    const { member, brewId } = await clubWithBrew();
    const token = await newKey(member);
    const [key] = await listSensorKeys(member);
    expect((await readBack(token, brewId)).status).toBe(200);
    const turn = () => takeTurn(`sensor:${key?.id ?? ""}`, { burst: 120, intervalS: 0.5 });
    const taken = await Promise.all(Array.from({ length: 250 }, turn));
    expect(taken).toContain(false);
    const refused = await readBack(token, brewId);
    expect(refused.status).toBe(429);
    expect(refused.headers.get("retry-after")).toBe("1");
    expect((await readBack(await newKey(member), brewId, "?limit=1")).status).toBe(200);
  });
});
