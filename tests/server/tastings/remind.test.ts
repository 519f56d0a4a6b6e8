import { describe, expect, it } from "vitest";
import { noticeInWords, noticePath } from "@/lib/model/notice";
import { inSpace } from "@/lib/server/db";
import { listNotices } from "@/lib/server/notices/reads";
import type { Member } from "@/lib/server/session";
import { findTasting } from "@/lib/server/tastings/reads";
import { remindJudges } from "@/lib/server/tastings/remind";
import { join, newClub } from "../../support/club";
import { choiceEvent, moveTasting, newJudging, sendSheets, sheetEvent, type Judging } from "../../support/judging";

/** Two judges with three beers, a triangle and a duo-trio each: the first has handed in all, the second one sheet. */
async function halfWay() {
  const judging = await newJudging();
  const [first, second] = judging.judges;
  if (first === undefined || second === undefined) throw new Error("it has two judges");
  const { tastingId, entryNos, glasses } = judging;
  await sendSheets(
    first,
    ...entryNos.map((entryNo) => sheetEvent(tastingId, entryNo)),
    choiceEvent(tastingId, 2, glasses(0, 2)[1] ?? 0),
    choiceEvent(tastingId, 3, glasses(0, 3)[2] ?? 0),
  );
  await sendSheets(second, sheetEvent(tastingId, 401), sheetEvent(tastingId, 402, { isFinal: false }));
  return { ...judging, first, second };
}

const remindersOf = async (member: Member) =>
  (await listNotices(member)).filter(({ kind }) => kind === "tasting reminder");

/** Moves the last reminder back, as its steward. */
async function remindedAgo({ steward, tastingId }: Judging, minutes: number): Promise<void> {
  const { spaceId, userId } = steward;
  await inSpace(spaceId, userId, (tx) =>
    tx.tasting.update({
      where: { spaceId_id: { spaceId, id: tastingId } },
      data: { remindedAt: new Date(Date.now() - minutes * 60_000) },
    }),
  );
}

describe("remindJudges", () => {
  it("tells those whose sheets are missing how many, and nobody else", async () => {
    const { organiser, steward, first, second, tastingId } = await halfWay();
    expect(await remindJudges(organiser, { id: tastingId })).toEqual({ judges: 1 });
    const [notice, ...others] = await remindersOf(second);
    expect(others).toEqual([]);
    if (notice === undefined) throw new Error("the judge was told");
    expect(noticeInWords(notice)).toBe("Autumn tasting: sheets of yours are not in yet");
    // Three beers, a triangle and a duo-trio; one sheet is handed in, and one that was only begun is not.
    expect(notice.payload.note).toContain("4 of your 5 sheets are not in yet.");
    expect(noticePath(notice)).toBe(`/tastings/${tastingId}`);
    for (const member of [organiser, steward, first]) expect(await remindersOf(member)).toEqual([]);
    expect((await findTasting(organiser, tastingId))?.remindedAt).toBeInstanceOf(Date);
  });

  it("says nothing of what is in a glass", async () => {
    const { steward, second, tastingId } = await halfWay();
    await remindJudges(steward, { id: tastingId });
    expect(JSON.stringify(await remindersOf(second))).not.toMatch(/Beer behind|40[123]|neighbour/);
  });

  it("is done once in half an hour, also by two at the same time", async () => {
    const judging = await halfWay();
    const { organiser, steward, second, tastingId } = judging;
    const answers = await Promise.allSettled([
      remindJudges(organiser, { id: tastingId }),
      remindJudges(steward, { id: tastingId }),
    ]);
    expect(answers.map(({ status }) => status).sort()).toEqual(["fulfilled", "rejected"]);
    expect(await remindersOf(second)).toHaveLength(1);
    await expect(remindJudges(organiser, { id: tastingId })).rejects.toThrow("less than 30 minutes ago");
    await remindedAgo(judging, 31);
    await remindJudges(organiser, { id: tastingId });
    expect(await remindersOf(second)).toHaveLength(2);
  });

  it("tells how a sheet still comes in once judging is closed, and is refused after the reveal", async () => {
    const judging = await halfWay();
    const { organiser, second, tastingId } = judging;
    await moveTasting(judging, "closed");
    await remindJudges(organiser, { id: tastingId });
    expect((await remindersOf(second))[0]?.payload.note).toContain("paper goes to the steward");
    await moveTasting(judging, "revealed");
    await expect(remindJudges(organiser, { id: tastingId })).rejects.toThrow("takes no sheets now");
  });

  it("has nobody to remind where all sheets are in", async () => {
    const judging = await newJudging({ judges: 1, entries: 2 });
    const { organiser, judges, tastingId, entryNos, glasses } = judging;
    const [judge] = judges;
    if (judge === undefined) throw new Error("it has a judge");
    const answers = ([2, 3] as const).map((flightNo) => choiceEvent(tastingId, flightNo, glasses(0, flightNo)[1] ?? 0));
    await sendSheets(judge, ...entryNos.map((entryNo) => sheetEvent(tastingId, entryNo)), ...answers);
    await expect(remindJudges(organiser, { id: tastingId })).rejects.toThrow("All sheets are in");
    expect((await findTasting(organiser, tastingId))?.remindedAt).toBeNull();
  });

  it("is for the steward and organisers of the club", async () => {
    const { organiser, second, tastingId } = await halfWay();
    const helper = await join(organiser, "steward");
    for (const member of [second, helper]) {
      await expect(remindJudges(member, { id: tastingId })).rejects.toMatchObject({ code: "FORBIDDEN" });
    }
    const { organiser: stranger } = await newClub();
    await expect(remindJudges(stranger, { id: tastingId })).rejects.toMatchObject({ code: "NOT_FOUND" });
    expect(await remindersOf(second)).toEqual([]);
  });
});
