import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { equipmentInput } from "@/lib/model/equipment";
import { proposalsOf } from "@/lib/model/trial/proposals";
import { trialDay } from "@/lib/model/trial/trial";
import { trialRuns } from "@/lib/model/trial/trial-log";
import { trialResults } from "@/lib/model/trial/trial-results";
import { contentHash } from "@/lib/server/content-hash";
import { inSpace } from "@/lib/server/db";
import { findEquipment } from "@/lib/server/equipment/reads";
import { createEquipment, saveEquipment } from "@/lib/server/equipment/writes";
import type { Member } from "@/lib/server/session";
import { acceptFigures } from "@/lib/server/trials/accept-figures";
import { beginTrial } from "@/lib/server/trials/begin";
import { findTrial, listTrials } from "@/lib/server/trials/reads";
import { recordEntries } from "@/lib/server/trials/record-entries";
import { parsedEquipment } from "../support/brewing";
import { join, newClub } from "../support/club";
import { sampleEquipment } from "../support/sample-recipe";
import { courseOf, entryOf } from "../support/trial-entries";

const KNOWN = { powerW: 1500, lossWPerK: 8, vesselJPerK: sampleEquipment().kettle.heatCapacity };
const everyFive = (until: number): number[] => Array.from({ length: until / 5 + 1 }, (_, i) => 5 * i);
const heatedAndCooled = () => [
  ...courseOf({ ...KNOWN, part: "heating", fromC: 15, minutes: everyFive(90) }),
  ...courseOf({ ...KNOWN, part: "cooling", fromC: 90, minutes: [0, 20, 40, 60] }),
];

async function clubWithTrial() {
  const club = await newClub("member", "guest");
  const { id: equipmentId } = await createEquipment(club.member, parsedEquipment());
  const { id: trialId } = await beginTrial(club.member, equipmentId);
  const send = (member: Member, ...entries: readonly unknown[]) =>
    recordEntries(member, { equipmentId, trialId, entries });
  return { ...club, equipmentId, trialId, send };
}

/** What the page would show: figures and values, from what is on the server. */
async function shown(member: Member, equipmentId: string, trialId: string) {
  const [trial, profile] = [await findTrial(member, equipmentId, trialId), await findEquipment(member, equipmentId)];
  if (trial === null || profile === null) throw new Error("the trial is there");
  const results = trialResults(trialRuns(trial.entries), profile.equipment);
  const proposals = proposalsOf({ results, equipment: profile.equipment, day: trialDay(trial.begunAt) });
  return proposals.map(({ figure, after }) => ({ figure, value: after.value }));
}

describe("a commissioning trial", () => {
  it("is begun by who keeps the kettle, and seen by everybody in the club and by nobody else", async () => {
    const { organiser, member, guest, equipmentId, trialId, send } = await clubWithTrial();
    const other = await join(organiser, "member");
    const entry = entryOf({ value: 42.5 });
    await send(member, entry);
    const seen = await findTrial(guest, equipmentId, trialId);
    expect(seen).toMatchObject({
      begunByName: "Some member",
      accepted: null,
      entries: [{ ...entry, actorName: "Some member" }],
    });
    expect(await listTrials(guest, equipmentId)).toMatchObject([{ id: trialId, entryCount: 1, acceptedRev: null }]);
    await expect(beginTrial(other, equipmentId)).rejects.toThrow(
      "Only the owner of this equipment or an organiser commissions it.",
    );
    const { organiser: outsider } = await newClub();
    await expect(beginTrial(outsider, equipmentId)).rejects.toThrow("There is no such equipment here.");
    expect(await findTrial(outsider, equipmentId, trialId)).toBeNull();
    expect(await listTrials(outsider, equipmentId)).toEqual([]);
    await expect(send(outsider, entryOf({}))).rejects.toThrow("There is no such trial here.");
    await expect(send(other, entryOf({}))).rejects.toThrow("Only the owner of this equipment or an organiser");
  });

  it("keeps each entry once, however often and from wherever it is delivered", async () => {
    const { organiser, member, send } = await clubWithTrial();
    const entries = heatedAndCooled();
    const answers = await Promise.all(Array.from({ length: 8 }, () => send(member, ...entries)));
    for (const { stored, refused } of answers) {
      expect(stored).toEqual(entries.map(({ id }) => id));
      expect(refused).toEqual([]);
    }
    const late = entryOf({ value: 50 });
    const { entries: kept } = await send(organiser, late);
    expect(kept.map(({ id }) => id).toSorted()).toEqual([...entries, late].map(({ id }) => id).toSorted());
  });

  it("never overwrites: another value under the same identifier is refused, here and in another trial", async () => {
    const { member, equipmentId, send } = await clubWithTrial();
    const entry = entryOf({ value: 40 });
    await send(member, entry);
    const refused = { id: entry.id, reason: expect.stringContaining("nothing was changed") as string };
    expect(await send(member, { ...entry, value: 60 })).toMatchObject({ stored: [], refused: [refused] });
    const { id: second } = await beginTrial(member, equipmentId);
    const elsewhere = await recordEntries(member, { equipmentId, trialId: second, entries: [entry] });
    expect(elsewhere).toMatchObject({ stored: [], refused: [refused], entries: [] });
  });

  it("takes what is good beside what is not, and says of each what is wrong", async () => {
    const { member, send } = await clubWithTrial();
    const [good, hot] = [entryOf({ value: 40 }), entryOf({ value: 300 })];
    const lost = entryOf({ replaces: randomUUID() });
    const ahead = entryOf({ occurredAt: new Date(Date.now() + 2 * 86_400_000).toISOString() });
    const { stored, refused, entries } = await send(member, hot, lost, ahead, good, "nothing");
    expect(stored).toEqual([good.id]);
    expect(entries).toHaveLength(1);
    const reasons = new Map(refused.map(({ id, reason }) => [id, reason]));
    expect(reasons.get(hot.id)).toBe("Temperature 300 °C is outside 0 to 102 °C");
    expect(reasons.get(ahead.id)).toContain("is more than a day ahead: set the clock of this device");
    expect(reasons.get(lost.id)).toBe("The entry that this one corrects is not in this trial");
    expect(reasons.get("")).toBe("This is no entry of a trial");
    expect(refused).toHaveLength(4);
  });

  it("is held to its ranges by the database itself, where something gets past the schema", async () => {
    const { member, trialId } = await clubWithTrial();
    const { spaceId, userId } = member;
    const row = { spaceId, trialId, part: "heating", run: 1, kind: "temperature", value: 40, payload: {} };
    const write = (change: object) =>
      inSpace(spaceId, userId, (tx) =>
        tx.trialReading.create({
          data: {
            ...row,
            ...{ id: randomUUID(), occurredAt: new Date("2026-11-07"), actorId: userId },
            payloadHash: contentHash(change),
            ...change,
          },
        }),
      );
    await expect(write({ value: 300 })).rejects.toThrow("range_temperature");
    await expect(write({ value: null })).rejects.toThrow("measured_has_value");
    await expect(write({ run: 0 })).rejects.toThrow("run_check");
    await expect(write({ kind: "void", value: null })).rejects.toThrow("void_names_what");
    await expect(write({ replaces: randomUUID() })).rejects.toThrow(/Foreign key|foreign key/);
    await expect(write({})).resolves.toMatchObject({ value: 40 });
  });

  it("counts the correction of a reading, and keeps what it corrects", async () => {
    const { member, send } = await clubWithTrial();
    const wrong = entryOf({ value: 24 });
    const right = entryOf({ value: 42, replaces: wrong.id });
    const { entries } = await send(member, wrong, right);
    const [run] = trialRuns(entries);
    expect(run?.readings).toHaveLength(1);
    expect(run?.readings[0]).toMatchObject({ entry: { value: 42 }, before: [{ value: 24 }] });
    const { entries: after } = await send(member, {
      ...Object.fromEntries(
        Object.entries(entryOf({ kind: "void", payload: {}, replaces: right.id })).filter(([key]) => key !== "value"),
      ),
    });
    expect(trialRuns(after)).toEqual([]);
  });
});

describe("the figures of a trial", () => {
  it("go into the profile as a revision, with what was measured and by what", async () => {
    const { member, equipmentId, trialId, send } = await clubWithTrial();
    await send(member, ...heatedAndCooled());
    const figures = await shown(member, equipmentId, trialId);
    expect(figures.map(({ figure }) => figure)).toEqual(["kettle.heatShare", "kettle.lossCoefficient"]);
    expect(await acceptFigures(member, { equipmentId, trialId, baseRev: 1, accepted: figures })).toEqual({
      ok: true,
      rev: 2,
    });

    const equipment = (await findEquipment(member, equipmentId))?.equipment;
    const kettle = equipment?.kettle;
    const day = trialDay((await findTrial(member, equipmentId, trialId))?.begunAt ?? "");
    expect(kettle?.lossCoefficient).toMatchObject({
      from: "measured",
      count: 1,
      basis: `commissioning trial of ${day}, 23 readings`,
    });
    expect(kettle?.lossCoefficient.value).toBeCloseTo(8, 1);
    const { ratedPower, ratedVoltage, supplyVoltage } = sampleEquipment().kettle;
    const drawnW = ratedPower * (supplyVoltage / ratedVoltage) ** 2;
    expect(kettle?.heatShare.value).toBeCloseTo(1500 / drawnW, 3);
    // Heating alone tells the difference of both, so one that is put too high is so with the other.
    const [tie] = equipment?.correlations ?? [];
    expect(tie).toMatchObject({ one: "kettle.heatShare", other: "kettle.lossCoefficient" });
    expect(tie?.coefficient).toBeGreaterThan(0);
    expect(tie?.coefficient).toBeLessThan(1);
    // Taken once more, they are what they are.
    expect(await acceptFigures(member, { equipmentId, trialId, baseRev: 2, accepted: figures })).toEqual({
      ok: false,
      reason: "unchanged",
    });
    // What was not chosen stays as it was.
    expect(kettle?.boilOff).toEqual(equipmentInput.parse(sampleEquipment()).kettle.boilOff);
    expect(await findTrial(member, equipmentId, trialId)).toMatchObject({
      accepted: { rev: 2, byName: "Some member" },
    });
  });

  it("are told to have changed when the profile was saved in between, and one of two who accept at once wins", async () => {
    const { organiser, member, equipmentId, trialId, send } = await clubWithTrial();
    await send(member, ...heatedAndCooled());
    const accepted = (await shown(member, equipmentId, trialId)).slice(0, 1);
    await saveEquipment(organiser, {
      id: equipmentId,
      baseRev: 1,
      equipment: equipmentInput.parse({ ...sampleEquipment(), name: "Renamed" }),
    });
    expect(await acceptFigures(member, { equipmentId, trialId, baseRev: 1, accepted })).toEqual({
      ok: false,
      reason: "stale",
      headRev: 2,
    });
    const both = await Promise.all(
      [member, organiser].map((who) => acceptFigures(who, { equipmentId, trialId, baseRev: 2, accepted })),
    );
    expect(both).toContainEqual({ ok: true, rev: 3 });
    expect(both).toContainEqual({ ok: false, reason: "stale", headRev: 3 });
  });

  it("are not saved when a reading came in since they were looked at, nor by who may not", async () => {
    const { organiser, member, equipmentId, trialId, send } = await clubWithTrial();
    const entries = heatedAndCooled();
    await send(member, ...entries);
    const accepted = await shown(member, equipmentId, trialId);
    await send(organiser, entryOf({ value: 70, replaces: entries[4]?.id }));
    await expect(acceptFigures(member, { equipmentId, trialId, baseRev: 1, accepted })).rejects.toThrow(
      "A reading came in since you looked",
    );
    const now = await shown(member, equipmentId, trialId);
    const other = await join(organiser, "member");
    await expect(acceptFigures(other, { equipmentId, trialId, baseRev: 1, accepted: now })).rejects.toThrow(
      "Only the owner of this equipment or an organiser changes it.",
    );
    const made = [{ figure: "kettle.boilOff" as const, value: 3 }];
    await expect(acceptFigures(member, { equipmentId, trialId, baseRev: 1, accepted: made })).rejects.toThrow(
      "A reading came in",
    );
    const { organiser: outsider } = await newClub();
    await expect(acceptFigures(outsider, { equipmentId, trialId, baseRev: 1, accepted: now })).rejects.toThrow(
      "There is no such trial here.",
    );
    expect(await findEquipment(member, equipmentId)).toMatchObject({ rev: 1 });
  });
});
