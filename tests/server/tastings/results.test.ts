import { describe, expect, it } from "vitest";
import { choiceStanding, sheetStanding } from "@/lib/model/tasting/judge-sheet";
import { tastingResults } from "@/lib/model/tasting/results";
import { inSpace } from "@/lib/server/db";
import { listJudgedFlights } from "@/lib/server/tastings/results-history";
import { findTastingFacts } from "@/lib/server/tastings/results-read";
import { enterPaperChoice, enterPaperSheet } from "@/lib/server/tastings/sheets-paper";
import { findSheetProgress } from "@/lib/server/tastings/sheets-progress";
import { findJudgeSheet } from "@/lib/server/tastings/sheets-read";
import { newClub } from "../../support/club";
import {
  choiceEvent,
  moveTasting,
  newJudging,
  sendSheets,
  sheetEvent,
  sheetOf,
  type Judging,
} from "../../support/judging";

/** Two judges, three entries; the second is two points severer, and did not taste the last. */
async function judged() {
  const judging = await newJudging();
  const [first, second] = judging.judges;
  if (first === undefined || second === undefined) throw new Error("two judges joined");
  const { tastingId, glasses } = judging;
  const points = (entryNo: number, total: number) => sheetEvent(tastingId, entryNo, { payload: sheetOf(total) });
  await sendSheets(first, points(401, 30), points(402, 36), points(403, 40));
  await sendSheets(
    first,
    choiceEvent(tastingId, 2, glasses(0, 2)[1] ?? 0),
    choiceEvent(tastingId, 3, glasses(0, 3)[2] ?? 0),
  );
  await sendSheets(second, points(401, 28), points(402, 34), sheetEvent(tastingId, 403, { isFinal: false }));
  await sendSheets(second, choiceEvent(tastingId, 2, glasses(1, 2)[0] ?? 0));
  return { ...judging, first, second };
}

async function reveal(judging: Judging): Promise<void> {
  await moveTasting(judging, "closed");
  await moveTasting(judging, "revealed");
}

describe("results of a tasting", () => {
  it("are there for nobody before the reveal, and nobody’s sheet is shown to another", async () => {
    const { organiser, steward, first, second, tastingId } = await judged();
    for (const member of [organiser, steward, first, second])
      expect(await findTastingFacts(member, tastingId)).toBeNull();
    const seen = (member: typeof first) =>
      inSpace(member.spaceId, member.userId, (tx) => tx.tastingEvent.count({ where: { tastingId } }));
    expect([await seen(organiser), await seen(first), await seen(second)]).toEqual([0, 5, 4]);
  });

  it("let steward and organisers see how many sheets are in, and no points", async () => {
    const { steward, organiser, first, tastingId, judges } = await judged();
    const progress = await findSheetProgress(steward, tastingId);
    const of = (judgeId: string, flightNo: number) =>
      progress?.find((row) => row.judgeId === judgeId && row.flightNo === flightNo);
    expect(of(judges[0]?.userId ?? "", 1)).toMatchObject({ toCome: 3, handedIn: 3, begun: 0 });
    expect(of(judges[1]?.userId ?? "", 1)).toMatchObject({ toCome: 3, handedIn: 2, begun: 1 });
    expect(of(judges[1]?.userId ?? "", 3)).toMatchObject({ toCome: 1, handedIn: 0, begun: 0 });
    expect(JSON.stringify(progress)).not.toMatch(/total|payload|points/);
    expect(await findSheetProgress(organiser, tastingId)).toEqual(progress);
    expect(await findSheetProgress(first, tastingId)).toBeNull();
  });

  it("count what was handed in, take off severity, and say what is missing", async () => {
    const judging = await judged();
    await reveal(judging);
    const facts = await findTastingFacts(judging.first, judging.tastingId);
    if (facts === null) throw new Error("it was revealed");
    const { scored, differences } = tastingResults(facts);
    const [flight] = scored;
    expect(flight?.missing).toBe(1);
    // By hand: 401 is 29 and 402 is 35 to the average judge, who is one point severer than the first one: 40 − 1.
    expect(
      flight?.entries.map(({ entry, rank, rawMean, adjusted }) => [entry.entryNo, rank, rawMean, adjusted?.adjusted]),
    ).toEqual([
      [403, 1, 40, expect.closeTo(39, 9)],
      [402, 2, 35, expect.closeTo(35, 9)],
      [401, 3, 29, expect.closeTo(29, 9)],
    ]);
    expect(flight?.judges.map(({ handedIn, begun }) => [handedIn, begun]).sort()).toEqual([
      [2, 1],
      [3, 0],
    ]);
    const severity = flight?.judges.map(({ effect }) => effect?.severity ?? NaN).sort();
    expect(severity).toEqual([expect.closeTo(-1, 9), expect.closeTo(1, 9)]);
    // One of two found the odd glass; the one who answered the duo-trio was right.
    expect(differences.map(({ test, answers, right }) => [test, answers, right])).toEqual([
      ["triangle", 2, 1],
      ["duo-trio", 1, 1],
    ]);
    // At least one right of two by guessing at one in three: 1 − (2/3)².
    expect(differences[0]?.weighed?.p).toBeCloseTo(5 / 9, 12);
  });

  it("are not found in another club", async () => {
    const judging = await judged();
    await reveal(judging);
    const { organiser: stranger } = await newClub();
    expect(await findTastingFacts(stranger, judging.tastingId)).toBeNull();
  });
});

describe("a sheet from paper", () => {
  const paper = (judgeId: string, entryNo: number, total: number) => ({
    ...{ judgeId, flightNo: 1, entryNo },
    sheet: sheetOf(total),
  });

  it("counts in the judge’s name, keeps that the steward entered it, and the judge sees so", async () => {
    const judging = await newJudging();
    const [judge] = judging.judges;
    if (judge === undefined) throw new Error("a judge joined");
    await enterPaperSheet(judging.steward, judging.tastingId, paper(judge.userId, 401, 33));
    const sheet = await findJudgeSheet(judge, judging.tastingId);
    const { last, handedIn } = sheetStanding(sheet?.entries ?? [], 401);
    expect(handedIn).toEqual(sheetOf(33));
    expect(last?.actorId).toBe(judging.steward.userId);
  });

  it("of a triangle counts as well, and judge and export are told that the steward entered it", async () => {
    const judging = await newJudging();
    const { judges, steward, tastingId, glasses } = judging;
    const [judge] = judges;
    if (judge === undefined) throw new Error("a judge joined");
    const glassNo = glasses(0, 2)[1] ?? 0;
    await enterPaperChoice(steward, tastingId, { judgeId: judge.userId, flightNo: 2, glassNo, note: "" });
    const { last, handedIn } = choiceStanding((await findJudgeSheet(judge, tastingId))?.entries ?? [], 2);
    expect(handedIn).toEqual({ glassNo, note: "" });
    expect(last).toMatchObject({ actorId: steward.userId, actorName: steward.displayName });
    await reveal(judging);
    const facts = await findTastingFacts(judge, tastingId);
    const choices = facts?.flights.flatMap((flight) => flight.choices);
    expect(choices).toMatchObject([{ isRight: true, enteredBy: steward.displayName }]);
  });

  it("is refused from anybody but the steward, and of an entry that the judge was not served", async () => {
    const { judges, organiser, steward, tastingId } = await newJudging();
    const [judge, other] = judges;
    if (judge === undefined || other === undefined) throw new Error("two judges joined");
    for (const member of [organiser, other]) {
      await expect(enterPaperSheet(member, tastingId, paper(judge.userId, 401, 33))).rejects.toThrow(
        "Only the steward of a tasting enters sheets from paper.",
      );
    }
    await expect(enterPaperSheet(steward, tastingId, paper(judge.userId, 501, 33))).rejects.toThrow(
      "Entry 501 is not served to this judge in this flight.",
    );
    const { organiser: stranger } = await newClub();
    await expect(enterPaperSheet(stranger, tastingId, paper(judge.userId, 401, 33))).rejects.toThrow(
      "There is no such tasting here.",
    );
  });
});

describe("judges over time", () => {
  it("shows everybody the own line alone, and an organiser all", async () => {
    const judging = await judged();
    await reveal(judging);
    const of = async (member: typeof judging.first) =>
      (await listJudgedFlights(member)).map(({ judgeId, handedIn }) => [judgeId, handedIn]);
    expect(await of(judging.first)).toEqual([[judging.first.userId, 3]]);
    expect(await of(judging.steward)).toEqual([]);
    expect(await of(judging.organiser)).toHaveLength(2);
  });
});
