import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { participationChange } from "@/lib/model/participation";
import { findBrewDay, listBrewDays } from "@/lib/server/calendar/brew-days";
import { calendarResponse } from "@/lib/server/calendar/respond";
import { calendarSince, makeCalendarToken, revokeCalendarToken } from "@/lib/server/calendar/tokens";
import { directory } from "@/lib/server/db";
import { proveCalendarReader, type Member } from "@/lib/server/session";
import { changePlan } from "@/lib/server/shared-brews/change-plan";
import { changePart, joinSharedBrew, leaveSharedBrew } from "@/lib/server/shared-brews/participants";
import { sha256 } from "@/lib/server/tokens";
import { join, newClub } from "../../support/club";
import { callSharedBrew, joiningOf, newKettle, planChangeOf } from "../../support/shared-brew";

const BREW_DAY = { day: "2027-03-20", time: "09:30", zone: "Europe/Berlin" };

async function joined() {
  const { organiser, member } = await newClub("member");
  const { sharedBrewId } = await callSharedBrew(organiser);
  const equipmentId = await newKettle(member);
  await joinSharedBrew(member, joiningOf(sharedBrewId, equipmentId, { brewDay: BREW_DAY }));
  return { organiser, member, sharedBrewId, equipmentId };
}

async function read(member: Member): Promise<readonly ICAL.Event[]> {
  const response = calendarResponse({ name: "Days", fileName: "days.ics", events: await listBrewDays(member) });
  const calendar = new ICAL.Component(ICAL.parse(await response.text()) as unknown[]);
  return calendar.getAllSubcomponents("vevent").map((each) => new ICAL.Event(each));
}

describe("the calendar of a member", () => {
  it("has the day from its start for as long as the brew day is predicted to take", async () => {
    const { member } = await joined();
    const [event, ...more] = await read(member);
    expect(more).toEqual([]);
    expect(event?.startDate.toJSDate()).toEqual(new Date("2027-03-20T08:30:00Z"));
    const minutes = ((event?.endDate.toJSDate().getTime() ?? 0) - Date.parse("2027-03-20T08:30:00Z")) / 60_000;
    // An hour's mash, ten minutes at 76 °C and an hour's boil are within it; a night is not.
    expect(minutes).toBeGreaterThan(130);
    expect(minutes).toBeLessThan(12 * 60);
    expect(event?.description).toContain("Plan version 1.");
  });

  it("keeps the event and raises its sequence when the plan or the day changes", async () => {
    const { organiser, member, sharedBrewId, equipmentId } = await joined();
    const seen = [...(await read(member))];
    await changePlan(organiser, planChangeOf(sharedBrewId, { window: { from: "2027-03-15", to: "2027-03-28" } }));
    seen.push(...(await read(member)));
    const brewDay = { ...BREW_DAY, day: "2027-03-21" };
    await changePart(
      member,
      participationChange.parse({ sharedBrewId, equipmentId, lockVersion: 1, brewDay, water: null, yeast: "" }),
    );
    seen.push(...(await read(member)));
    expect(new Set(seen.map(({ uid }) => uid)).size).toBe(1);
    expect(seen.map(({ sequence }) => sequence)).toEqual([0, 1, 2]);
    expect(seen[2]?.startDate.toJSDate()).toEqual(new Date("2027-03-21T08:30:00Z"));
  });

  it("calls the day off when the member leaves, and when the shared brew is cancelled", async () => {
    const one = await joined();
    await leaveSharedBrew(one.member, { ...one, lockVersion: 1 });
    const two = await joined();
    await changePlan(two.organiser, planChangeOf(two.sharedBrewId, { state: "cancelled" }));
    for (const member of [one.member, two.member]) {
      const [event] = await listBrewDays(member);
      expect(event).toMatchObject({ isCancelled: true, sequence: 1, remindAt: expect.any(Date) as Date });
    }
  });

  it("is not another member’s, and not in another club", async () => {
    const { organiser, member, sharedBrewId, equipmentId } = await joined();
    expect(await listBrewDays(organiser)).toEqual([]);
    expect(await listBrewDays(await join(organiser, "member"))).toEqual([]);
    const { organiser: stranger } = await newClub();
    expect(await findBrewDay(stranger, { sharedBrewId, equipmentId })).toBeNull();
    expect(await findBrewDay(member, { sharedBrewId, equipmentId })).not.toBeNull();
  });
});

describe("a private address", () => {
  it("shows the days of its owner to whoever has it, who may only look", async () => {
    const { member } = await joined();
    const { token } = await makeCalendarToken(member);
    const reader = await proveCalendarReader(token);
    expect(reader).toMatchObject({ userId: member.userId, spaceId: member.spaceId, role: "guest" });
    expect(reader === null ? [] : await listBrewDays(reader)).toHaveLength(1);
    expect(await proveCalendarReader(`${token.slice(0, -1)}${token.endsWith("A") ? "B" : "A"}`)).toBeNull();
  });

  it("is kept as a hash only", async () => {
    const { member } = await newClub("member");
    const { token } = await makeCalendarToken(member);
    const rows = await directory.calendarToken.findMany({ where: { userId: member.userId } });
    expect(rows.map(({ tokenHash }) => Buffer.from(tokenHash))).toEqual([Buffer.from(sha256(token))]);
    expect(JSON.stringify(rows)).not.toContain(token);
  });

  it("ends when it is revoked, when another is made, and when the membership or the account ends", async () => {
    const { member } = await newClub("member");
    const { token: first } = await makeCalendarToken(member);
    const { token: second } = await makeCalendarToken(member);
    expect(await proveCalendarReader(first)).toBeNull();
    expect(await proveCalendarReader(second)).not.toBeNull();
    expect(await calendarSince(member)).toBeInstanceOf(Date);
    await revokeCalendarToken(member);
    expect(await proveCalendarReader(second)).toBeNull();
    expect(await calendarSince(member)).toBeNull();

    const { token: third } = await makeCalendarToken(member);
    const key = { spaceId_userId: { spaceId: member.spaceId, userId: member.userId } };
    await directory.membership.update({ where: key, data: { status: "left" } });
    expect(await proveCalendarReader(third)).toBeNull();
    await directory.membership.update({ where: key, data: { status: "active" } });
    expect(await proveCalendarReader(third)).not.toBeNull();
    await directory.appUser.update({ where: { id: member.userId }, data: { disabledAt: new Date() } });
    expect(await proveCalendarReader(third)).toBeNull();
  });

  it("ends after 400 days, as an address that was never made", async () => {
    const { member } = await newClub("member");
    const { token } = await makeCalendarToken(member);
    const madeAgo = (days: number) =>
      directory.calendarToken.updateMany({
        where: { userId: member.userId },
        data: { createdAt: new Date(Date.now() - days * 86_400_000) },
      });
    await madeAgo(399);
    expect(await proveCalendarReader(token)).not.toBeNull();
    await madeAgo(401);
    expect(await proveCalendarReader(token)).toBeNull();
    expect(await calendarSince(member)).toBeNull();
  });

  it("is one for each member, however often it is asked for at once", async () => {
    const { member } = await newClub("member");
    await Promise.all([1, 2, 3].map(() => makeCalendarToken(member)));
    const open = await directory.calendarToken.count({ where: { userId: member.userId, revokedAt: null } });
    expect(open).toBe(1);
  });
});
