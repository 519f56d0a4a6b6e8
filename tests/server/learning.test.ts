import { randomUUID } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { FIGURES, intervals, type Equipment, type FigureName } from "@/lib/calc/ledger";
import { unlearnedProfile } from "@/lib/model/learning/unlearned-profile";
import { planBrew } from "@/lib/server/brews/plan";
import { createEquipment } from "@/lib/server/equipment/writes";
import { findEquipment } from "@/lib/server/equipment/reads";
import { acceptLearned } from "@/lib/server/learning/accept";
import { findLearning } from "@/lib/server/learning/learned";
import { startFromKind } from "@/lib/server/learning/start";
import type { Member } from "@/lib/server/session";
import { clubThatBrewed, logBoil } from "../support/boiled-brew";
import { brewInput } from "../support/brewed";
import { brewOf, parsedEquipment } from "../support/brewing";
import { join, newClub } from "../support/club";
import { forgetKettlesElsewhere } from "../support/forget-kettles-elsewhere";

async function learningOf(member: Member, equipmentId: string) {
  const learning = await findLearning(member, equipmentId, null);
  if (learning === null) throw new Error("nothing was learned");
  const row = (wanted: FigureName) => learning.learned.rows.find(({ name }) => name === wanted);
  return { ...learning, row };
}

beforeEach(forgetKettlesElsewhere);

describe("what brews tell of a kettle", () => {
  it("moves the boil-off to where a brew read it, and narrows it", async () => {
    const { member, equipmentId } = await clubThatBrewed();
    const { brews, row } = await learningOf(member, equipmentId);
    expect(brews.map(({ evidence }) => evidence.readings)).toEqual([3]);
    const boilOff = row("kettle.boilOff");
    expect(boilOff?.own?.brews).toBe(1);
    // An hour's boil that took two litres more: no more than those two kilograms, and some of them.
    const rise = (boilOff?.own?.value ?? 0) - (boilOff?.now.value ?? 0);
    expect(rise).toBeGreaterThan(0.2);
    expect(rise).toBeLessThan(2);
    expect(boilOff?.own?.standardError).toBeLessThan(boilOff?.now.sd ?? 0);
  });

  it("goes into the profile when its owner takes it, and is the same figure afterwards, not counted twice", async () => {
    const { member, equipmentId } = await clubThatBrewed();
    const before = (await learningOf(member, equipmentId)).row("kettle.boilOff");
    const value = before?.proposed?.value ?? NaN;
    const accepted = [{ figure: "kettle.boilOff" as const, value }];
    expect(await acceptLearned(member, { equipmentId, baseRev: 1, since: null, accepted })).toEqual({
      ok: true,
      rev: 2,
    });
    const profile = await findEquipment(member, equipmentId);
    expect(profile?.equipment.kettle.boilOff).toMatchObject({ value, from: "learned", basis: "1 brew on this kettle" });

    const after = (await learningOf(member, equipmentId)).row("kettle.boilOff");
    expect(after?.own).toEqual(before?.own);
    expect(after?.now).toMatchObject({ value, from: "learned" });
  });

  it("stands in the profile tied as it was learned, which changes what the next brew is predicted to be", async () => {
    const { member, equipmentId } = await clubThatBrewed();
    const { learned } = await learningOf(member, equipmentId);
    const accepted = learned.rows.flatMap(({ name, proposed }) =>
      proposed === null ? [] : [{ figure: name, value: proposed.value }],
    );
    await acceptLearned(member, { equipmentId, baseRev: 1, since: null, accepted });
    const profile = await findEquipment(member, equipmentId);
    const { correlations, ...untied } = profile?.equipment ?? expect.fail("the kettle is gone");
    const names = new Set<FigureName>(accepted.map(({ figure }) => figure));
    const all = learned.correlations.filter(({ one, other }) => names.has(one) && names.has(other));
    expect(all.length).toBeGreaterThan(0);
    expect(correlations).toEqual(all);

    const day = { recipe: brewInput().recipe, ambient: brewInput().ambient };
    const volume = (equipment: Equipment) => intervals({ ...day, equipment })["kettle.postBoil"];
    expect(volume({ ...untied, correlations: all })).not.toEqual(volume(untied));

    // One of them alone: nothing is known of how it goes with figures that are not these.
    const [first] = accepted;
    if (first === undefined) throw new Error("nothing was learned");
    await acceptLearned(member, { equipmentId, baseRev: 2, since: null, accepted: [first] });
    const again = (await findEquipment(member, equipmentId))?.equipment.correlations ?? [];
    expect(again).toEqual(all.filter(({ one, other }) => one !== first.figure && other !== first.figure));
  });

  it("is refused from a stale page, with another value, and from who does not own the kettle", async () => {
    const { organiser, member, equipmentId } = await clubThatBrewed();
    const value = (await learningOf(member, equipmentId)).row("kettle.boilOff")?.proposed?.value ?? NaN;
    const take = (who: Member, of: number, baseRev = 1) =>
      acceptLearned(who, { equipmentId, baseRev, since: null, accepted: [{ figure: "kettle.boilOff", value: of }] });
    await expect(take(member, value * 1.01)).rejects.toMatchObject({ code: "CONFLICT" });
    await expect(take(await join(organiser, "member"), value)).rejects.toMatchObject({ code: "FORBIDDEN" });
    await expect(take((await newClub()).organiser, value)).rejects.toMatchObject({ code: "NOT_FOUND" });
    expect(await take(member, value, 7)).toEqual({ ok: false, reason: "stale", headRev: 1 });
    expect((await findEquipment(member, equipmentId))?.rev).toBe(1);
  });

  it("counts brews from the one that is named", async () => {
    const { member, recipeId, equipmentId } = await clubThatBrewed();
    const { id: second } = await planBrew(member, brewOf({ recipeId, equipmentId, sharedBrewId: null }));
    await logBoil(member, second);
    const all = await findLearning(member, equipmentId, null);
    const since = await findLearning(member, equipmentId, all?.brews[1]?.id ?? "");
    expect([all?.counted.length, since?.counted.length, since?.brews.length]).toEqual([2, 1, 2]);
    expect(await findLearning(member, equipmentId, randomUUID())).toBeNull();
  });

  it("starts a new kettle of the kind, and helps the others", async () => {
    const { organiser, member, equipmentId } = await clubThatBrewed();
    const { equipment } = parsedEquipment();
    const started = await startFromKind(organiser, equipment);
    expect(started.kettle.boilOff).toMatchObject({ from: "learned", basis: "1 brew on other kettles of its kind" });
    expect(started.kettle.boilOff.value).toBeGreaterThan(equipment.kettle.boilOff.value);

    const { id } = await createEquipment(organiser, parsedEquipment());
    const fresh = (await learningOf(organiser, id)).row("kettle.boilOff");
    // The sample profile states its figures, which is one more piece of knowledge of the kind.
    expect(fresh).toMatchObject({ own: null, kind: { kettles: 2, brews: 1 } });
    expect(fresh?.proposed?.basis).toBe("1 brew on other kettles of its kind");
    const own = (await learningOf(member, equipmentId)).row("kettle.boilOff");
    expect(own?.proposed?.basis).toBe("1 brew on this kettle");

    const elsewhere = (await newClub()).organiser;
    expect(await startFromKind(elsewhere, equipment)).toEqual(equipment);
  });
});

describe("unlearnedProfile", () => {
  it("puts what stood before in the place of what was learned", () => {
    const [place] = FIGURES;
    if (place === undefined) throw new Error("there are no figures");
    const { equipment: first } = parsedEquipment();
    const set = (value: number, from: "learned" | "measured") =>
      place.withFigure(first, { ...place.of(first), value, from });
    const [measured, learned] = [set(0.8, "measured"), set(0.9, "learned")];
    expect(place.of(unlearnedProfile([learned, measured, first]))).toEqual(place.of(measured));
    expect(unlearnedProfile([measured, learned, first])).toEqual(measured);
    // Learned from the start, from others of its kind: nothing else is known.
    expect(unlearnedProfile([learned])).toEqual(learned);
  });
});
