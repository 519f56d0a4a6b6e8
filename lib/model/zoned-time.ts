import { z } from "zod";
import { isDay, plainDay } from "./plain-day";

const TIME = /^([01]\d|2[0-3]):([0-5]\d)$/;
const MINUTE_MS = 60_000;

/** A time on the clock of one place. */
export interface ZonedTime {
  readonly day: string;
  /** "09:00". */
  readonly time: string;
  /** By its name in the zone database: "Europe/London". */
  readonly zone: string;
}

export const zonedTime: z.ZodType<ZonedTime> = z
  .strictObject({
    day: plainDay("Brew day"),
    time: z.string().regex(TIME, "Start of the brew day is a time of day from 00:00 to 23:59, such as 09:00"),
    zone: z.string().max(60).refine(isZone, "Time zone is not one of the list, such as Europe/London"),
  })
  // What is wrong by itself has been said, and cannot be looked up.
  .refine((value) => !isReadable(value) || instantOf(value) !== null, {
    path: ["time"],
    message: "Start of the brew day does not exist on this day: the clocks go forward then",
  });
/** The moment that a clock in the zone shows this; the earlier of two; null where the clocks jump over it. */
export function instantOf({ day, time, zone }: ZonedTime): Date | null {
  const asUtc = Date.parse(`${day}T${time}:00Z`);
  // Zones are at most a day apart, so the offset of a day before and a day after are all that can hold here.
  const offsets = [asUtc - 24 * 60 * MINUTE_MS, asUtc + 24 * 60 * MINUTE_MS].map((at) => offsetMs(new Date(at), zone));
  const found = offsets
    .map((offset) => new Date(asUtc - offset))
    .filter((at) => {
      const local = localTime(at, zone);
      return local.day === day && local.time === time;
    });
  return found.reduce<Date | null>((first, at) => (first === null || at < first ? at : first), null);
}

/** What a clock in the zone shows. */
export function localTime(at: Date, zone: string): ZonedTime {
  const local = new Date(at.getTime() + offsetMs(at, zone)).toISOString();
  return { day: local.slice(0, 10), time: local.slice(11, 16), zone };
}

const WORDS: Intl.DateTimeFormatOptions = {
  weekday: "short",
  day: "numeric",
  month: "short",
  year: "numeric",
  hour: "2-digit",
  minute: "2-digit",
};

/** "Sun, 14 Mar 2027, 09:00 (Europe/London)": with the zone, since people meet across some. */
export function timeInWords(at: Date, zone: string): string {
  return `${new Intl.DateTimeFormat("en-GB", { ...WORDS, timeZone: zone }).format(at)} (${zone})`;
}

/** How far the clocks of the zone are ahead of UTC at this moment. */
function offsetMs(at: Date, zone: string): number {
  const parts = clockOf(zone).formatToParts(at);
  const part = (type: Intl.DateTimeFormatPartTypes): string => parts.find((each) => each.type === type)?.value ?? "00";
  const shown = `${part("year")}-${part("month")}-${part("day")}T${part("hour")}:${part("minute")}:00Z`;
  return Date.parse(shown) - Math.floor(at.getTime() / MINUTE_MS) * MINUTE_MS;
}

const MOST_CLOCKS = 500;
/** Making one takes longer than a hundred uses of it, and a file of readings has twenty thousand times. */
const clocks = new Map<string, Intl.DateTimeFormat>();

function clockOf(zone: string): Intl.DateTimeFormat {
  const known = clocks.get(zone);
  if (known !== undefined) return known;
  const clock = new Intl.DateTimeFormat("en-GB", {
    timeZone: zone,
    year: "numeric",
    month: "2-digit",
    day: "2-digit",
    hour: "2-digit",
    minute: "2-digit",
    hourCycle: "h23",
  });
  // A zone may be spelt in many ways, and who sends them is not to fill the memory.
  if (clocks.size >= MOST_CLOCKS) clocks.clear();
  clocks.set(zone, clock);
  return clock;
}

function isReadable({ day, time, zone }: ZonedTime): boolean {
  return isDay(day) && TIME.test(time) && isZone(zone);
}

export function isZone(zone: string): boolean {
  // An offset such as "+01:00" is none of a place, and the calendar would not know its summer time.
  if (!/^[A-Za-z]/.test(zone)) return false;
  try {
    new Intl.DateTimeFormat("en-GB", { timeZone: zone });
    return true;
  } catch {
    return false;
  }
}
