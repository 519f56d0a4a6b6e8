import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { logEventInput } from "@/lib/model/log/log-event-input";
import { remindIn } from "@/lib/server/cellar/remind";
import { inSpace } from "@/lib/server/db";
import { storeWhole } from "@/lib/server/log/ingest";
import { listNotices } from "@/lib/server/notices/reads";
import { sampleRecipe } from "../../support/sample-recipe";
import { ENDED, newFermentation, onDay, withDryHop } from "../../support/cellar";
import { newClub } from "../../support/club";

const EARLY = ENDED.slice(0, 2);

const addition = (brewId: string) =>
  logEventInput.parse({
    ...{ id: randomUUID(), brewId, deviceId: randomUUID(), deviceSeq: 1, occurredAt: onDay(6).toISOString() },
    ...{ kind: "addition", name: "Dry hop", amount: 60, unit: "g", at: "fermenter", note: "" },
  });

describe("remindIn", () => {
  it("tells the brewer of dry hops once, also when several processes look at the same moment", async () => {
    const { member, organiser } = await newClub("member");
    const brewId = await newFermentation(member, { recipe: withDryHop(), gravities: ENDED });
    const looks = await Promise.all(Array.from({ length: 6 }, () => remindIn(member.spaceId, onDay(12))));
    expect(looks.filter((told) => told === 1)).toHaveLength(1);
    expect(await remindIn(member.spaceId, onDay(13))).toBe(0);
    expect(await listNotices(member)).toMatchObject([
      { kind: "dry hop", payload: { brewId, title: "Test ale", kettle: "Test kettle", note: "Dry hop, 60 g" } },
    ]);
    expect(await listNotices(organiser)).toEqual([]);
  });

  it("tells nobody before nine tenths of the fall, nor when the hops are in already", async () => {
    const { member } = await newClub("member");
    await newFermentation(member, { recipe: withDryHop(), gravities: EARLY });
    expect(await remindIn(member.spaceId, onDay(2))).toBe(0);
    const hopped = await newFermentation(member, { recipe: withDryHop(), gravities: ENDED });
    expect(await storeWhole(member, [addition(hopped)])).toBeNull();
    expect(await remindIn(member.spaceId, onDay(2))).toBe(0);
    expect(await listNotices(member)).toEqual([]);
  });

  it("asks for a rest of a beer that was pitched cool, and of no other", async () => {
    const { member } = await newClub("member");
    await newFermentation(member, { gravities: ENDED });
    const cool = { yeast: { ...sampleRecipe().yeast, celsius: 11 } };
    const brewId = await newFermentation(member, { recipe: cool, gravities: ENDED });
    expect(await remindIn(member.spaceId, onDay(12))).toBe(1);
    expect(await listNotices(member)).toMatchObject([{ kind: "diacetyl rest", payload: { brewId } }]);
  });

  it("leaves what it wrote: nobody takes a reminder back to be told twice", async () => {
    const { member } = await newClub("member");
    await newFermentation(member, { recipe: withDryHop(), gravities: ENDED });
    await remindIn(member.spaceId, onDay(12));
    const erased = inSpace(member.spaceId, member.userId, (tx) => tx.brewReminder.deleteMany({}));
    await expect(erased).rejects.toThrow(/permission denied/);
  });
});
