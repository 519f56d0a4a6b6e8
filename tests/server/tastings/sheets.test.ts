import { describe, expect, it } from "vitest";
import { choiceStanding, sheetStanding } from "@/lib/model/tasting/judge-sheet";
import { BLANK_SHEET } from "@/lib/model/tasting/sheet";
import { inSpace } from "@/lib/server/db";
import type { Member } from "@/lib/server/session";
import { ingestSheets } from "@/lib/server/tastings/sheets-ingest";
import { findJudgeSheet } from "@/lib/server/tastings/sheets-read";
import { newClub } from "../../support/club";
import {
  choiceEvent,
  moveTasting,
  newJudging,
  sendSheets,
  sheetDelivery,
  sheetEvent,
  sheetOf,
} from "../../support/judging";

async function countEvents({ spaceId, userId }: Member, tastingId: string): Promise<number> {
  return inSpace(spaceId, userId, (tx) => tx.tastingEvent.count({ where: { tastingId } }));
}

const reasons = (answer: { readonly rejected: readonly { readonly reason: string }[] }): readonly string[] =>
  answer.rejected.map(({ reason }) => reason);

async function oneJudge() {
  const judging = await newJudging();
  const [judge, other] = judging.judges;
  if (judge === undefined || other === undefined) throw new Error("two judges joined");
  return { ...judging, judge, other };
}

describe("what a judge sends", () => {
  it("is stored once, however often and from how many at once it comes", async () => {
    const { judge, steward, tastingId } = await oneJudge();
    const events = [401, 402, 403].map((entryNo) => sheetEvent(tastingId, entryNo));
    const answers = await Promise.all(Array.from({ length: 6 }, () => sendSheets(judge, ...events)));
    expect(answers.flatMap(({ stored }) => stored).sort()).toEqual(events.map(({ id }) => String(id)).sort());
    expect(answers.flatMap(({ duplicate }) => duplicate)).toHaveLength(15);
    expect(await countEvents(steward, tastingId)).toBe(3);
  });

  it("is refused under an identifier that says something else already", async () => {
    const { judge, tastingId } = await oneJudge();
    const event = sheetEvent(tastingId, 401);
    await sendSheets(judge, event);
    const answer = await sendSheets(judge, { ...event, payload: sheetOf(50) });
    expect(reasons(answer)).toEqual(["Another sheet with this identifier is there already; nothing was changed."]);
  });

  it("counts by the last save of a device whatever order they arrive in, and the earlier stay", async () => {
    const { judge, steward, tastingId } = await oneJudge();
    const first = sheetEvent(tastingId, 401, { payload: sheetOf(20) });
    const second = sheetEvent(tastingId, 401, { payload: sheetOf(41) });
    await sendSheets(judge, second);
    await sendSheets(judge, first);
    const sheet = await findJudgeSheet(judge, tastingId);
    expect(sheetStanding(sheet?.entries ?? [], 401).payload).toEqual(sheetOf(41));
    expect(await countEvents(steward, tastingId)).toBe(2);
  });

  it("counts by time between two devices, moved by what the clock of one is off", async () => {
    const { judge, tastingId } = await oneJudge();
    const early = sheetEvent(tastingId, 401, { occurredAt: "2027-03-14T15:00:00.000Z", payload: sheetOf(20) });
    // This clock is three hours slow: what it calls 13:00 was at 16:00.
    const late = sheetEvent(tastingId, 401, {
      deviceId: "00000000-0000-7000-8000-0000000000cc",
      occurredAt: "2027-03-14T13:00:00.000Z",
      payload: sheetOf(33),
    });
    await ingestSheets(judge, sheetDelivery(judge, [early], { sentAt: new Date().toISOString() }));
    const slow = new Date(Date.now() - 3 * 3_600_000).toISOString();
    await ingestSheets(judge, sheetDelivery(judge, [late], { sentAt: slow }));
    const sheet = await findJudgeSheet(judge, tastingId);
    expect(sheetStanding(sheet?.entries ?? [], 401).payload).toEqual(sheetOf(33));
  });

  it("goes on counting as handed in while a change is begun and not handed in", async () => {
    const { judge, tastingId } = await oneJudge();
    await sendSheets(judge, sheetEvent(tastingId, 402, { payload: sheetOf(30) }));
    await sendSheets(judge, sheetEvent(tastingId, 402, { payload: BLANK_SHEET, isFinal: false }));
    const { entries } = (await findJudgeSheet(judge, tastingId)) ?? { entries: [] };
    const standing = sheetStanding(entries, 402);
    expect(standing).toMatchObject({ isHandedIn: false, payload: BLANK_SHEET, handedIn: sheetOf(30) });
  });

  it("is refused with the field, the value and the range where it is wrong, and the rest is taken", async () => {
    const { judge, tastingId } = await oneJudge();
    const payload = sheetOf(30);
    const wrong = sheetEvent(tastingId, 401, { payload: { ...payload, scores: { ...payload.scores, aroma: 13 } } });
    const quarter = sheetEvent(tastingId, 402, { payload: { ...payload, scores: { ...payload.scores, aroma: 7.25 } } });
    const unfinished = sheetEvent(tastingId, 402, { payload: BLANK_SHEET });
    const right = sheetEvent(tastingId, 403);
    const answer = await sendSheets(judge, wrong, quarter, unfinished, right);
    expect(answer.stored).toEqual([right["id"]]);
    expect(reasons(answer)).toEqual([
      "Points for aroma 13 is outside 0 to 12",
      "Points for aroma are given to the half point",
      "A sheet is handed in with all its points; missing: aroma, appearance, flavour, mouthfeel, overall impression",
    ]);
  });
});

describe("who may send it", () => {
  it("is a judge of the flight, for an entry that he or she is served", async () => {
    const { judge, organiser, tastingId } = await oneJudge();
    expect(reasons(await sendSheets(organiser, sheetEvent(tastingId, 401)))).toEqual([
      "This flight is not judged by you.",
    ]);
    const answer = await sendSheets(judge, sheetEvent(tastingId, 501), sheetEvent(tastingId, 888));
    // An entry of another flight and one that is nowhere are answered alike.
    expect(reasons(answer)).toEqual([
      "Entry 501 is not served to this judge in this flight.",
      "Entry 888 is not served to this judge in this flight.",
    ]);
  });

  it("is nobody of another club, to whom the tasting is not there", async () => {
    const { tastingId } = await oneJudge();
    const { organiser: stranger } = await newClub();
    expect(reasons(await sendSheets(stranger, sheetEvent(tastingId, 401)))).toEqual(["There is no such tasting here."]);
    expect(await findJudgeSheet(stranger, tastingId)).toBeNull();
  });

  it("may send while it is open or closed, and not before or after", async () => {
    const draft = await newJudging({ state: "draft" });
    const [early] = draft.judges;
    if (early === undefined) throw new Error("a judge joined");
    expect(reasons(await sendSheets(early, sheetEvent(draft.tastingId, 401)))).toEqual([
      "This tasting is not open yet.",
    ]);
    const judging = await oneJudge();
    const { judge, tastingId } = judging;
    await moveTasting(judging, "closed");
    expect(await sendSheets(judge, sheetEvent(tastingId, 401))).toMatchObject({ rejected: [] });
    await moveTasting(judging, "revealed");
    expect(reasons(await sendSheets(judge, sheetEvent(tastingId, 402)))).toEqual([
      "This tasting has been revealed and takes no more sheets.",
    ]);
  });
});

describe("a triangle and a duo-trio", () => {
  it("take one of the judge’s own three glasses, and of a duo-trio not the reference", async () => {
    const { judge, tastingId, glasses } = await oneJudge();
    const [, odd] = glasses(0, 2);
    const [reference, , like] = glasses(0, 3);
    const [foreign] = glasses(1, 2);
    const stored = await sendSheets(judge, choiceEvent(tastingId, 2, odd ?? 0), choiceEvent(tastingId, 3, like ?? 0));
    expect(stored.rejected).toEqual([]);
    const answer = await sendSheets(
      judge,
      choiceEvent(tastingId, 2, foreign ?? 0),
      choiceEvent(tastingId, 3, reference ?? 0),
    );
    expect(reasons(answer)).toEqual([
      `Glass ${String(foreign)} is not one of this judge’s glasses in this flight.`,
      `Glass ${String(reference)} is the reference; choose one of the other two.`,
    ]);
    const { entries } = (await findJudgeSheet(judge, tastingId)) ?? { entries: [] };
    expect(choiceStanding(entries, 2).handedIn).toEqual({ glassNo: odd, note: "" });
  });
});

describe("before the reveal", () => {
  it("a judge’s device gets numbers, styles and its own sheets, and nothing else", async () => {
    const { judge, other, steward, tastingId } = await oneJudge();
    await sendSheets(other, sheetEvent(tastingId, 401, { payload: sheetOf(17) }));
    const sheet = await findJudgeSheet(judge, tastingId);
    expect(sheet?.flights.map(({ kind, entries, glasses }) => [kind, entries.length, glasses.length])).toEqual([
      ["scored", 3, 0],
      ["triangle", 0, 3],
      ["duo-trio", 0, 3],
    ]);
    expect(sheet?.entries).toEqual([]);
    const text = JSON.stringify(sheet);
    expect(text).not.toContain("Beer behind");
    expect(text).not.toContain(other.userId);
    // The steward prepares and does not judge.
    expect(await findJudgeSheet(steward, tastingId)).toBeNull();
  });

  it("a draft says nothing of its orders", async () => {
    const { judges, tastingId } = await newJudging({ state: "draft" });
    const [judge] = judges;
    expect(judge === undefined ? null : await findJudgeSheet(judge, tastingId)).toMatchObject({ flights: [] });
  });
});
