import { beforeEach, describe, expect, it } from "vitest";
import type { EquipmentKind } from "@/lib/model/typical-equipment";
import { kettleKind } from "@/lib/model/learning/kettle-kind";
import { closeAccount } from "@/lib/server/accounts/close-account";
import { inSpace } from "@/lib/server/db";
import { createEquipment } from "@/lib/server/equipment/writes";
import { findEquipment } from "@/lib/server/equipment/reads";
import {
  findIsGiven,
  findKettlesElsewhere,
  giveKettle,
  remakeStaleContributions,
} from "@/lib/server/learning/contributions";
import { findLearning } from "@/lib/server/learning/learned";
import { startFromKind } from "@/lib/server/learning/start";
import { planBrew } from "@/lib/server/brews/plan";
import { clubThatBrewed, logBoil } from "../support/boiled-brew";
import { brewOf, parsedEquipment } from "../support/brewing";
import { newClub, TEST_PASSWORD } from "../support/club";
import { forgetKettlesElsewhere } from "../support/forget-kettles-elsewhere";

const { equipment: SAMPLE } = parsedEquipment();
const KIND: EquipmentKind = kettleKind(SAMPLE);

beforeEach(forgetKettlesElsewhere);

async function clubsThatGave(count: number) {
  const clubs = [];
  for (let i = 0; i < count; i++) {
    const club = await clubThatBrewed();
    await giveKettle(club.member, { equipmentId: club.equipmentId, isGiven: true });
    clubs.push(club);
  }
  return clubs;
}

describe("what kettles of other clubs tell", () => {
  it("is given from five people on, names nobody, and starts a kettle elsewhere", async () => {
    const reader = (await newClub("member")).member;
    const four = await clubsThatGave(4);
    const [first] = four;
    if (first === undefined) throw new Error("the test's own set-up failed");
    // A second kettle of the same person is no fifth person.
    const { id: second } = await createEquipment(first.member, parsedEquipment());
    await giveKettle(first.member, { equipmentId: second, isGiven: true });
    expect(await findKettlesElsewhere(reader, KIND)).toEqual({ kettles: [], people: 0 });
    expect(await startFromKind(reader, SAMPLE)).toEqual(SAMPLE);

    const [fifth] = await clubsThatGave(1);
    if (fifth === undefined) throw new Error("the test's own set-up failed");
    const elsewhere = await findKettlesElsewhere(reader, KIND);
    expect([elsewhere.kettles.length, elsewhere.people]).toEqual([6, 5]);
    const told = JSON.stringify(elsewhere);
    for (const { member, equipmentId, brewId } of [...four, fifth]) {
      const profile = await findEquipment(member, equipmentId);
      for (const secret of [member.userId, member.displayName, member.spaceId, member.spaceName, equipmentId, brewId]) {
        expect(told).not.toContain(secret);
      }
      expect(told).not.toContain(profile?.equipment.name ?? "?");
    }

    const started = await startFromKind(reader, SAMPLE);
    expect(started.kettle.boilOff).toMatchObject({ from: "learned", basis: "5 brews on other kettles of its kind" });
    expect(started.kettle.boilOff.value).toBeGreaterThan(SAMPLE.kettle.boilOff.value);
    const { id } = await createEquipment(reader, parsedEquipment());
    const learning = await findLearning(reader, id, null);
    expect(learning?.elsewhere.people).toBe(5);
    expect(learning?.learned.rows.find(({ name }) => name === "kettle.boilOff")?.kind).toMatchObject({ brews: 5 });

    // The own club's kettles are not others': for one who gave, four other people are too few.
    expect(await findKettlesElsewhere(fifth.member, KIND)).toEqual({ kettles: [], people: 0 });

    // Taken back, it is gone at once.
    await giveKettle(fifth.member, { equipmentId: fifth.equipmentId, isGiven: false });
    expect(await findIsGiven(fifth.member, fifth.equipmentId)).toBe(false);
    expect(await findKettlesElsewhere(reader, KIND)).toEqual({ kettles: [], people: 0 });
    expect(await startFromKind((await newClub()).organiser, SAMPLE)).toEqual(SAMPLE);
  });

  it("is decided by the owner alone", async () => {
    const { organiser, equipmentId } = await clubThatBrewed();
    const give = { equipmentId, isGiven: true };
    await expect(giveKettle(organiser, give)).rejects.toMatchObject({ code: "FORBIDDEN" });
    await expect(giveKettle((await newClub()).organiser, give)).rejects.toMatchObject({ code: "NOT_FOUND" });
    expect(await findIsGiven(organiser, equipmentId)).toBe(false);
  });

  it("is never read row by row from another club", async () => {
    const { member, equipmentId } = await clubThatBrewed();
    await giveKettle(member, { equipmentId, isGiven: true });
    const { organiser } = await newClub();
    const rowsSeenBy = ({ spaceId, userId }: typeof member) =>
      inSpace(spaceId, userId, (tx) => tx.kettleContribution.count({ where: { equipmentId } }));
    expect([await rowsSeenBy(member), await rowsSeenBy(organiser)]).toEqual([1, 0]);
  });

  it("goes with the account of who gave it", async () => {
    const { organiser, member, equipmentId } = await clubThatBrewed();
    await giveKettle(member, { equipmentId, isGiven: true });
    await closeAccount(member, { password: TEST_PASSWORD });
    expect(await findIsGiven(organiser, equipmentId)).toBe(false);
  });

  it("follows the brews that come later", async () => {
    const { member, recipeId, equipmentId } = await clubThatBrewed();
    await giveKettle(member, { equipmentId, isGiven: true });
    const given = async () => {
      const { content } = await inSpace(member.spaceId, member.userId, (tx) =>
        tx.kettleContribution.findUniqueOrThrow({
          where: { spaceId_equipmentId: { spaceId: member.spaceId, equipmentId } },
        }),
      );
      return (content as { brews: unknown[] }).brews.length;
    };
    expect(await given()).toBe(1);
    const { id } = await planBrew(member, brewOf({ recipeId, equipmentId, sharedBrewId: null }));
    await logBoil(member, id);
    // Somebody looks, which makes the summary; the program then gives what it says.
    await findLearning(member, equipmentId, null);
    await remakeStaleContributions(member.spaceId);
    expect(await given()).toBe(2);
  });
});
