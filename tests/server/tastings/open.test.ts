import { describe, expect, it } from "vitest";
import { inSpace } from "@/lib/server/db";
import { listNotices } from "@/lib/server/notices/reads";
import type { Member } from "@/lib/server/session";
import { closeTasting, revealTasting } from "@/lib/server/tastings/close";
import { enterBrews } from "@/lib/server/tastings/entries";
import { openTasting } from "@/lib/server/tastings/open";
import { setPanel } from "@/lib/server/tastings/panel";
import { findTasting } from "@/lib/server/tastings/reads";
import {
  draftTasting,
  flightIn,
  newTastingClub,
  openedTasting,
  outsideBeer,
  packagedBrew,
  seenNow,
} from "../../support/tasting";

const servingsOf = ({ spaceId, userId }: Member, tastingId: string) =>
  inSpace(spaceId, userId, (tx) =>
    tx.tastingServing.findMany({ where: { tastingId }, orderBy: [{ judgeId: "asc" }, { position: "asc" }] }),
  );

describe("openTasting", () => {
  it("serves every judge all four entries, each entry in as many places as there are judges", async () => {
    const { steward, judges, id, entryNos } = await openedTasting();
    const servings = await servingsOf(steward, id);
    expect(servings).toHaveLength(12);
    for (const { userId } of judges) {
      const own = servings.filter(({ judgeId }) => judgeId === userId);
      expect(own.map(({ entryNo }) => entryNo).sort()).toEqual(entryNos);
    }
    for (const entryNo of entryNos) {
      const places = servings.filter((each) => each.entryNo === entryNo).map(({ position }) => position);
      expect(new Set(places).size).toBe(3);
    }
    expect((await findTasting(judges[0], id))?.state).toBe("open");
  });

  it("tells judges and pourers, and nobody else", async () => {
    const { organiser, judges, pourer, brewer, id } = await openedTasting();
    for (const told of [...judges, pourer]) {
      expect(await listNotices(told)).toMatchObject([{ kind: "tasting opened", payload: { tastingId: id } }]);
    }
    for (const other of [organiser, brewer]) expect(await listNotices(other)).toEqual([]);
  });

  it("gives nobody an own beer, and all the same number", async () => {
    const { steward, judges, brewer, id, flightNo, brewIds } = await draftWithBrewerAsJudge();
    await openTasting(steward, await seenNow(steward, id));
    const servings = await servingsOf(steward, id);
    const own = await inSpace(steward.spaceId, steward.userId, (tx) =>
      tx.tastingIdentity.findMany({ where: { tastingId: id, brewId: { in: [...brewIds] } } }),
    );
    for (const { userId } of [...judges, brewer]) {
      expect(servings.filter(({ judgeId }) => judgeId === userId)).toHaveLength(2);
    }
    const codes = own.map(({ entryNo }) => entryNo);
    expect(servings.filter((each) => each.judgeId === brewer.userId && codes.includes(each.entryNo))).toEqual([]);
    expect(flightNo).toBe(1);
  });

  it("freezes what is tasted", async () => {
    const { steward, brewer, id, flightNo } = await openedTasting();
    const late = await packagedBrew(brewer, "Late ale");
    await expect(enterBrews(steward, { ...(await seenNow(steward, id)), flightNo, brewIds: [late] })).rejects.toThrow(
      "The tasting is open for judging; what is tasted does not change any more.",
    );
  });
});

async function draftWithBrewerAsJudge() {
  const club = await newTastingClub();
  const { steward, brewer, judges } = club;
  const brewIds = [await packagedBrew(brewer, "Hedgerow ale"), await packagedBrew(brewer, "Towpath bitter")];
  const id = await draftTasting(steward);
  const flightNo = await flightIn(steward, id);
  await enterBrews(steward, { ...(await seenNow(steward, id)), flightNo, brewIds });
  for (const name of ["Millpond porter", "Lantern stout"]) await outsideBeer(steward, id, flightNo, name);
  const panel = { judges: [...judges, brewer].map(({ userId }) => userId), pourers: [] };
  await setPanel(steward, { ...(await seenNow(steward, id)), flightNo, ...panel });
  return { ...club, id, flightNo, brewIds };
}

describe("a difference test", () => {
  it("numbers three glasses for each judge, two alike and one odd, and shows the key to the steward alone", async () => {
    const club = await newTastingClub();
    const { steward, judges, organiser } = club;
    const id = await draftTasting(steward);
    const flightNo = await flightIn(steward, id, "triangle");
    const codes = [await outsideBeer(steward, id, flightNo, "One"), await outsideBeer(steward, id, flightNo, "Other")];
    const panel = { judges: judges.map(({ userId }) => userId), pourers: [] };
    await setPanel(steward, { ...(await seenNow(steward, id)), flightNo, ...panel });
    await openTasting(steward, await seenNow(steward, id));
    const read = (member: Member) =>
      inSpace(member.spaceId, member.userId, async (tx) => ({
        glasses: await tx.tastingGlass.findMany({ where: { tastingId: id }, orderBy: { position: "asc" } }),
        keys: await tx.tastingGlassKey.findMany({ where: { tastingId: id } }),
      }));
    const { glasses, keys } = await read(steward);
    expect(new Set([...glasses.map(({ glassNo }) => glassNo), ...codes]).size).toBe(11);
    for (const { userId } of judges) {
      const own = glasses.filter(({ judgeId }) => judgeId === userId).map(({ glassNo }) => glassNo);
      const holds = keys.filter(({ glassNo }) => own.includes(glassNo)).map(({ entryNo }) => entryNo);
      expect(holds).toHaveLength(3);
      expect(new Set(holds).size).toBe(2);
    }
    expect(await read(judges[0])).toMatchObject({
      keys: [],
      glasses: [{ position: 1 }, { position: 2 }, { position: 3 }],
    });
    expect(await read(organiser)).toEqual({ glasses: [], keys: [] });
  });
});

describe("the reveal", () => {
  it("is one act of an organiser, after closing, and tells brewers and judges", async () => {
    const { organiser, steward, brewer, judges, id, brewIds } = await openedTasting();
    await expect(revealTasting(organiser, { id })).rejects.toThrow("is open for judging, so it is not revealed now");
    await closeTasting(steward, { id });
    await expect(revealTasting(steward, { id })).rejects.toThrow("Only an organiser does this.");
    expect((await findTasting(brewer, id))?.revealed).toBeNull();
    await revealTasting(organiser, { id });
    await expect(revealTasting(organiser, { id })).rejects.toThrow("The tasting is revealed");
    const revealed = (await findTasting(judges[0], id))?.revealed ?? [];
    expect(revealed.flatMap(({ brewId }) => brewId ?? []).sort()).toEqual([...brewIds].sort());
    for (const told of [brewer, judges[0]]) {
      expect((await listNotices(told)).map(({ kind }) => kind)).toContain("tasting revealed");
    }
  });
});
