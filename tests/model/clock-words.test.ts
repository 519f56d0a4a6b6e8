import { describe, expect, it } from "vitest";
import { localClockWords, utcClockWords } from "@/lib/model/clock-words";

// The second way: the formatter of dates of the language itself, with what differs between its versions evened out.
const CLOCK = { hour: "2-digit", minute: "2-digit", hourCycle: "h23" } as const;
const DAY = { weekday: "short", day: "numeric", month: "short" } as const;
const UTC = { timeZone: "UTC", timeZoneName: "short" } as const;

function formatted(at: Date, options: Intl.DateTimeFormatOptions): string {
  return new Intl.DateTimeFormat("en-GB", options).format(at).replace(/^(\w{3}), /, "$1 ");
}

const MOMENTS = Array.from({ length: 400 }, (_, i) => new Date(Date.UTC(2026, 0, 1, 0, 3) + i * 23.7 * 3_600_000));

describe("the words of a clock", () => {
  it("are those of the language's formatter, for each day of a year", () => {
    for (const at of MOMENTS) {
      expect(localClockWords(at, true)).toBe(formatted(at, { ...DAY, ...CLOCK }));
      expect(localClockWords(at, false)).toBe(formatted(at, CLOCK));
      expect(utcClockWords(at, true)).toBe(formatted(at, { ...DAY, ...CLOCK, ...UTC }));
    }
  });

  it("say midnight as 00:00, and that they are in UTC", () => {
    const midnight = new Date("2026-11-29T00:00:00Z");
    expect(utcClockWords(midnight, false)).toBe("00:00 UTC");
    expect(utcClockWords(midnight, true)).toBe("Sun 29 Nov, 00:00 UTC");
  });
});
