import { describe, expect, it } from "vitest";
import { findBrew } from "@/lib/server/brews/reads";
import { inSpace } from "@/lib/server/db";
import { ingest, storeWhole } from "@/lib/server/log/ingest";
import type { Member } from "@/lib/server/session";
import { ENDED, gravityOf, newFermentation, packageOf } from "../../support/cellar";
import { newClub } from "../../support/club";

async function readyBeer() {
  const { member, organiser } = await newClub("member");
  return { member, organiser, brewId: await newFermentation(member, { gravities: ENDED }) };
}

const packagings = async (member: Member, brewId: string) =>
  (await findBrew(member, brewId))?.log.packagings.map(({ content }) => content) ?? [];

/** 2.4 volumes at 25 °C are 4.712 g/L; by Henry's law for beer, 1.409 g/(L bar), 2.33 bar over the air: more than this keg is made for. */
const weak = { containers: [{ name: "Weak keg", litres: 19, count: 1, ratedBar: 2 }] };
const signed = { name: "some  MEMBER", why: "Tested with water to 4 bar" };

describe("packaging", () => {
  it("takes beer that stands still in containers that hold it, and the brew is in package", async () => {
    const { member, brewId } = await readyBeer();
    expect(await storeWhole(member, [packageOf(brewId)])).toBeNull();
    const brew = await findBrew(member, brewId);
    expect(brew?.state).toBe("in package");
    expect(brew?.log.packagings.map(({ content }) => content.containers[0]?.count)).toEqual([38]);
  });

  it("refuses more pressure than is stated, whoever asks, until it is signed with the name and a reason", async () => {
    const { member, brewId } = await readyBeer();
    expect(await storeWhole(member, [packageOf(brewId, weak)])).toMatch(/^Weak keg is not made for this carbonation/);
    const wrongName = packageOf(brewId, { ...weak, override: { ...signed, name: "me" } });
    expect(await storeWhole(member, [wrongName])).toMatch(
      "The name “me” is neither yours nor that of the beer: type “Some member” or “Test ale”.",
    );
    expect(await packagings(member, brewId)).toEqual([]);
    expect(await storeWhole(member, [packageOf(brewId, { ...weak, override: signed })])).toBeNull();
    expect((await packagings(member, brewId))[0]?.override).toEqual(signed);
  });

  it("holds a bottle without a stated pressure to the carbonation that the recipe states", async () => {
    const { member, brewId } = await readyBeer();
    const unmarked = { containers: [{ name: "500 mL bottle", litres: 0.5, count: 38, ratedBar: null }] };
    // The sample recipe states 3.5 volumes at most.
    expect(await storeWhole(member, [packageOf(brewId, { ...unmarked, volumesCo2: 3.6 })])).toMatch(/^500 mL bottle/);
    expect(await storeWhole(member, [packageOf(brewId, { ...unmarked, volumesCo2: 3.4 })])).toBeNull();
  });

  it("refuses a beer whose gravity still falls, until a reason is given", async () => {
    const { member } = await newClub("member");
    const brewId = await newFermentation(member, {
      gravities: [
        [1, 10.8],
        [4, 6],
        [6, 4.4],
      ],
    });
    expect(await storeWhole(member, [packageOf(brewId)])).toBe("The gravity still falls: the beer ferments.");
    const early = { why: "It goes into a keg with a valve" };
    expect(await storeWhole(member, [packageOf(brewId, { early })])).toBeNull();
    expect((await packagings(member, brewId))[0]?.early).toEqual(early);
  });

  it("is all or nothing: what belongs to a refused packaging is not stored either", async () => {
    const { member, brewId } = await readyBeer();
    const before = (await findBrew(member, brewId))?.entries.length;
    expect(await storeWhole(member, [gravityOf(brewId, 14, 2.9), packageOf(brewId, weak)])).not.toBeNull();
    expect((await findBrew(member, brewId))?.entries.length).toBe(before);
  });

  it("is held to the same by the way that phones deliver, and delivered again it is a duplicate", async () => {
    const { member, brewId } = await readyBeer();
    const deliver = (event: object) =>
      ingest(member, {
        space: member.spaceSlug,
        user: member.userId,
        sentAt: new Date().toISOString(),
        roundTripMs: 0,
        unsteady: [],
        events: [event],
      });
    const refused = packageOf(brewId, weak);
    expect((await deliver(refused)).rejected.map(({ id }) => id)).toEqual([refused.id]);
    const taken = packageOf(brewId);
    expect((await deliver(taken)).stored).toEqual([taken.id]);
    expect((await deliver(taken)).duplicate).toEqual([taken.id]);
  });

  it("cannot be in the log without saying whether somebody signed: the database asks for it", async () => {
    const { member, brewId } = await readyBeer();
    await storeWhole(member, [packageOf(brewId)]);
    const forged = inSpace(
      member.spaceId,
      member.userId,
      (tx) =>
        tx.$executeRaw`INSERT INTO brew_event (space_id, id, brew_id, device_id, actor_id, kind, occurred_at, payload, payload_hash)
        SELECT space_id, gen_random_uuid(), brew_id, device_id, actor_id, kind, occurred_at, payload - 'override', payload_hash
        FROM brew_event WHERE kind = 'package' AND brew_id = ${brewId}::uuid`,
    );
    await expect(forged).rejects.toThrow("package_is_signed");
  });

  it("of another club's beer is not found, and of somebody else's not theirs", async () => {
    const { brewId } = await readyBeer();
    const { organiser: outsider } = await newClub();
    expect(await storeWhole(outsider, [packageOf(brewId)])).toBe("There is no such brew here.");
  });
});
