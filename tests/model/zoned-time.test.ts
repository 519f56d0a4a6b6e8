import { describe, expect, it } from "vitest";
import { instantOf, localTime, zonedTime } from "@/lib/model/zoned-time";

// Known changes of the clocks: Berlin goes from +1 to +2 at 01:00 UTC on 28 March 2027 and back at 01:00 UTC on 31 October.
const ROWS = [
  { day: "2027-03-27", time: "09:00", zone: "Europe/Berlin", utc: "2027-03-27T08:00:00Z" },
  { day: "2027-03-28", time: "01:59", zone: "Europe/Berlin", utc: "2027-03-28T00:59:00Z" },
  { day: "2027-03-28", time: "03:00", zone: "Europe/Berlin", utc: "2027-03-28T01:00:00Z" },
  { day: "2027-10-31", time: "02:30", zone: "Europe/Berlin", utc: "2027-10-31T00:30:00Z" },
  { day: "2027-07-01", time: "00:15", zone: "Asia/Kathmandu", utc: "2027-06-30T18:30:00Z" },
  { day: "2027-01-01", time: "23:00", zone: "Pacific/Auckland", utc: "2027-01-01T10:00:00Z" },
  { day: "2027-01-01", time: "12:00", zone: "UTC", utc: "2027-01-01T12:00:00Z" },
];

describe("instantOf", () => {
  it.each(ROWS)("$day $time in $zone is $utc", ({ utc, ...local }) => {
    expect(instantOf(local)).toEqual(new Date(utc));
    expect(localTime(new Date(utc), local.zone)).toEqual(local);
  });

  it("knows no time that the clocks jump over", () => {
    expect(instantOf({ day: "2027-03-28", time: "02:30", zone: "Europe/Berlin" })).toBeNull();
  });
});

describe("zonedTime", () => {
  const right = { day: "2027-03-27", time: "09:00", zone: "Europe/Berlin" };

  it.each([
    [{ day: "" }, "Brew day is empty"],
    [{ day: "2027-02-30" }, "Brew day “2027-02-30” is not a day of the calendar"],
    [{ day: "1999-12-31" }, "Brew day 1999-12-31 is outside 2000-01-01 to 2199-12-31"],
    [{ time: "25:00" }, "a time of day from 00:00 to 23:59"],
    [{ zone: "Atlantis/Centre" }, "Time zone is not one of the list"],
    [{ zone: "+01:00" }, "Time zone is not one of the list"],
    [{ day: "2027-03-28", time: "02:30" }, "does not exist on this day"],
  ])("refuses %j", (change, words) => {
    const parsed = zonedTime.safeParse({ ...right, ...change });
    expect(parsed.error?.issues.map(({ message }) => message).join()).toContain(words);
  });

  it("takes the rest", () => {
    expect(zonedTime.parse(right)).toEqual(right);
  });
});
