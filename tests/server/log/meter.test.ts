import { randomUUID } from "node:crypto";
import { describe, expect, it } from "vitest";
import { meterReadings } from "@/lib/model/meter-readings";
import { deliveryInput } from "@/lib/model/log/delivery";
import { findBrew } from "@/lib/server/brews/reads";
import { ingest } from "@/lib/server/log/ingest";
import type { Member } from "@/lib/server/session";
import { makeSummary } from "@/lib/server/summaries/remake";
import { inSpace } from "@/lib/server/db";
import { newBrewing } from "../../support/brewing";
import { newClub } from "../../support/club";

async function clubWithBrew() {
  const club = await newClub("member");
  return { ...club, ...(await newBrewing(club.organiser, club.member)) };
}

let count = 0;

/** The meter as a phone sends it, so many minutes into the day. */
function meterAt(brewId: string, minute: number, value: number, change: object = {}): Record<string, unknown> {
  count += 1;
  return {
    ...{ id: randomUUID(), brewId, deviceId: "00000000-0000-7000-8000-0000000000ee", deviceSeq: count },
    occurredAt: new Date(Date.parse("2026-05-02T08:00:00Z") + minute * 60_000).toISOString(),
    ...{ kind: "energy", quantity: "day.meter", value, sd: 0.05, instrument: "electricity meter", sampleC: null },
    ...{ note: "", entered: `${String(value)} kWh`, step: null },
    ...change,
  };
}

const send = (member: Member, ...events: readonly unknown[]) => {
  const stated = { space: member.spaceSlug, user: member.userId, roundTripMs: 0, unsteady: [] };
  return ingest(member, deliveryInput.parse({ ...stated, sentAt: new Date().toISOString(), events }));
};

const energyOf = async ({ spaceId, userId }: Member, brewId: string) =>
  (await inSpace(spaceId, userId, (tx) => makeSummary(tx, spaceId, brewId)))?.summary.figures.find(
    ({ quantity }) => quantity === "day.energy",
  );

describe("an electricity meter in the log", () => {
  it("read at both ends of the day is the electricity of the brew, in its log and among others", async () => {
    const { member, brewId } = await clubWithBrew();
    // The end reaches the server before the start, as it may from a phone without a network.
    const answer = await send(member, meterAt(brewId, 360, 8048.7), meterAt(brewId, 0, 8041.2));
    expect(answer.rejected).toEqual([]);
    const brew = await findBrew(member, brewId);
    expect(brew === null ? [] : meterReadings(brew)).toEqual([
      { value: 8041.2, sd: 0.05 },
      { value: 8048.7, sd: 0.05 },
    ]);
    const figure = await energyOf(member, brewId);
    // 8048.7 − 8041.2, with √2 · 0.05 and 1.2816 of it to either side.
    expect(figure?.measured).toBeCloseTo(7.5, 6);
    expect(figure?.measuredSd).toBeCloseTo(0.0707, 4);
    expect(figure?.measuredHigh80).toBeCloseTo(7.5906, 4);
    expect(figure?.planned).toBeGreaterThan(0);
  });

  it("follows a correction, and does not count what was said not to", async () => {
    const { member, brewId } = await clubWithBrew();
    const [start, end] = [meterAt(brewId, 0, 100), meterAt(brewId, 360, 180)];
    await send(member, start, end);
    const { kind, quantity, sd, instrument, sampleC, note, entered, step } = meterAt(brewId, 0, 0);
    const stamp = ({ id, deviceId, deviceSeq, occurredAt }: Record<string, unknown>) => ({
      ...{ id, deviceId, deviceSeq, occurredAt, brewId },
    });
    const measured = { kind, quantity, value: 108, sd, instrument, sampleC, note, entered, step };
    await send(member, { ...stamp(meterAt(brewId, 361, 0)), kind: "correct", targetId: end.id, seen: [], measured });
    expect((await energyOf(member, brewId))?.measured).toBeCloseTo(8, 6);
    await send(member, { ...stamp(meterAt(brewId, 362, 0)), kind: "void", targetId: start.id, seen: [], why: "" });
    expect(await energyOf(member, brewId)).toMatchObject({ measured: null, expectation: null });
  });

  it.each([
    [-1, "Electricity meter -1 kWh is outside 0 to 1000000 kWh"],
    [1_000_001, "Electricity meter 1000001 kWh is outside 0 to 1000000 kWh"],
  ])("refuses %d with field, value and range", async (value, reason) => {
    const { member, brewId } = await clubWithBrew();
    const answer = await send(member, meterAt(brewId, 0, value));
    expect(answer.stored).toEqual([]);
    expect(answer.rejected[0]?.reason).toContain(reason);
  });

  it("is no temperature: a kind that does not go with the quantity is refused", async () => {
    const { member, brewId } = await clubWithBrew();
    const answer = await send(member, meterAt(brewId, 0, 50, { kind: "temperature" }));
    expect(answer.rejected[0]?.reason).toContain("Electricity meter is a reading of the kind energy");
  });
});
