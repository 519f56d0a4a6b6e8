import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { brewDayEvent, type BrewDay } from "@/lib/model/brew-day-event";
import { calendarText, type CalendarEvent } from "@/lib/model/calendar";
import { AS_WRITTEN } from "@/lib/model/shared-brew-rules";

const stamp = new Date("2027-03-01T12:00:00Z");

const event: CalendarEvent = {
  uid: "one@gylebook",
  sequence: 3,
  start: new Date("2027-03-20T08:30:00Z"),
  end: new Date("2027-03-20T15:15:00Z"),
  summary: "Brew",
  description: "Nothing",
  url: "https://brewing.example/s/club",
  isCancelled: false,
  remindAt: new Date("2027-03-19T18:00:00Z"),
};

const NASTY = [
  "commas, semicolons; and \\ backslashes",
  "lines\nof\r\nthree kinds\rhere",
  "Ünïcödé – “quotes” 🍺".repeat(12),
  "BEGIN:VEVENT\nSUMMARY:forged",
  "x".repeat(400),
];

function parse(text: string) {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents("vevent").map((each) => new ICAL.Event(each));
}

describe("calendarText", () => {
  it.each(NASTY)("gives back what was written: %j", (words) => {
    const text = calendarText({ name: words, stamp, events: [{ ...event, summary: words, description: words }] });
    const events = parse(text);
    const read = words.replaceAll(/\r\n|\r/g, "\n");
    expect(events).toHaveLength(1);
    expect(events[0]?.summary).toBe(read);
    expect(events[0]?.description).toBe(read);
  });

  // RFC 5545, 3.1: lines end with CRLF and have at most 75 octets; a fold must not tear a character.
  it.each(NASTY)("keeps to 75 octets a line, with CRLF at each end: %j", (words) => {
    const bytes = new TextEncoder().encode(
      calendarText({ name: "Days", stamp, events: [{ ...event, summary: words }] }),
    );
    const lines: number[][] = [[]];
    bytes.forEach((byte, i) => {
      if (byte === 0x0a) {
        expect(bytes[i - 1]).toBe(0x0d);
        lines.push([]);
      } else if (byte === 0x0d) expect(bytes[i + 1]).toBe(0x0a);
      else lines.at(-1)?.push(byte);
    });
    expect(lines.at(-1)).toEqual([]);
    for (const line of lines) {
      expect(line.length).toBeLessThanOrEqual(75);
      expect(() => new TextDecoder("utf-8", { fatal: true }).decode(Uint8Array.from(line))).not.toThrow();
    }
  });

  it("has the times in UTC, the sequence, the state and the reminder", () => {
    const text = calendarText({ name: "Days", stamp, events: [event] });
    const [read] = parse(text);
    expect(read?.uid).toBe("one@gylebook");
    expect(read?.sequence).toBe(3);
    expect(read?.startDate.toJSDate()).toEqual(event.start);
    expect(read?.endDate.toJSDate()).toEqual(event.end);
    for (const line of ["VERSION:2.0", "DTSTAMP:20270301T120000Z", "DTSTART:20270320T083000Z", "STATUS:CONFIRMED"]) {
      expect(text.split("\r\n")).toContain(line);
    }
    expect(text).toContain("BEGIN:VALARM\r\nACTION:DISPLAY\r\nTRIGGER;VALUE=DATE-TIME:20270319T180000Z\r\n");
  });

  it("calls off a day with its state and without a reminder", () => {
    const text = calendarText({ name: "Days", stamp, events: [{ ...event, isCancelled: true }] });
    expect(text).toContain("STATUS:CANCELLED\r\n");
    expect(text).not.toContain("VALARM");
  });
});

describe("brewDayEvent", () => {
  const day: BrewDay = {
    sharedBrewId: "s1",
    equipmentId: "k1",
    title: "Spring brew",
    kettleName: "Shed fifty",
    brewAt: new Date("2027-03-20T08:30:00Z"),
    zone: "Europe/Berlin",
    planVersion: 1,
    lockVersion: 1,
    rules: AS_WRITTEN,
    isCancelled: false,
    dayMinutes: { value: 404.2, low80: 380, high80: 430 },
    url: null,
  };

  it("lasts as long as is predicted, to the next whole minute", () => {
    // 404.2 min, taken as 405: 6 h 45 min after half past eight.
    expect(brewDayEvent(day).end).toEqual(new Date("2027-03-20T15:15:00Z"));
    expect(brewDayEvent(day).description).toContain(
      "6 h 44 min; four times out of five between 6 h 20 min and 7 h 10 min",
    );
  });

  it("reminds at seven on the evening before, by the clock of the place", () => {
    // Seven in Berlin is six in UTC in March; in New York, eleven at night.
    expect(brewDayEvent(day).remindAt).toEqual(new Date("2027-03-19T18:00:00Z"));
    const there = { ...day, zone: "America/New_York", brewAt: new Date("2027-03-20T13:00:00Z") };
    expect(brewDayEvent(there).remindAt).toEqual(new Date("2027-03-19T23:00:00Z"));
  });

  it("keeps its name and grows in sequence with the plan and with the member’s own changes", () => {
    const changes = [day, { ...day, planVersion: 2 }, { ...day, planVersion: 2, lockVersion: 2 }].map(brewDayEvent);
    expect(new Set(changes.map(({ uid }) => uid)).size).toBe(1);
    expect(changes.map(({ sequence }) => sequence)).toEqual([0, 1, 2]);
  });
});
