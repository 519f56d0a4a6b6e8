import { describe, expect, it } from "vitest";
import { answerOf } from "@/lib/model/summary/answer";
import { questionOf } from "@/lib/model/summary/question";
import { storeEvents } from "@/lib/server/log/ingest";
import { listAcross } from "@/lib/server/summaries/across";
import { listSummaries } from "@/lib/server/summaries/reads";
import { newBrewing } from "../../support/brewing";
import { gravityOf } from "../../support/cellar";
import { newClub } from "../../support/club";

const QUESTION = questionOf({ quantity: "kettle.preBoilGravity" });

async function clubThatMeasured() {
  const { organiser, member } = await newClub("member");
  const ids: string[] = [];
  for (const brewer of [member, organiser]) {
    const { brewId } = await newBrewing(organiser, brewer);
    const events = [
      gravityOf(brewId, 0, 11 + ids.length, {
        ...{ kind: "gravity", quantity: "kettle.preBoilGravity", instrument: "other" },
      }),
      ...[gravityOf(brewId, 1, 10), gravityOf(brewId, 2, 8)],
    ];
    const actorId = brewer.userId;
    const fates = await storeEvents(
      brewer,
      events.map((event) => ({ event, actorId, sentAt: null, clockOffsetMs: null })),
    );
    expect(fates.map(({ fate }) => fate)).toEqual(events.map(() => "stored"));
    ids.push(brewId);
  }
  return { member, ids };
}

describe("listAcross", () => {
  it("answers as the whole summaries do, and has the brews of its page whole", async () => {
    const { member } = await clubThatMeasured();
    const whole = await listSummaries(member, {}, { withCurves: true });
    const { brews, answer } = await listAcross(member, {}, { question: QUESTION, asked: {} });
    expect(answer.measured).toHaveLength(2);
    expect(answer).toEqual(answerOf(QUESTION, whole));
    expect(brews).toEqual(whole);
    expect(brews.every(({ curves }) => curves.length > 0)).toBe(true);
  });

  it("holds of a brew that the page does not show the figure that is asked for alone", async () => {
    const { member, ids } = await clubThatMeasured();
    const [brew] = await listSummaries(member, { ids: ids.slice(0, 1) }, { onlyFigure: QUESTION.quantity });
    const [whole] = await listSummaries(member, { ids: ids.slice(0, 1) });
    const figures = whole?.summary?.figures.filter(({ quantity }) => quantity === QUESTION.quantity);
    expect(figures).toHaveLength(1);
    const { counts } = whole?.summary ?? {};
    expect(brew).toEqual({ ...whole, summary: { figures, account: null, suspects: [], counts } });
  });
});
