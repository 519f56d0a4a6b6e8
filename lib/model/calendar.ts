/** One brew day as a calendar shows it. */
export interface CalendarEvent {
  /** The same for the same brew day in every version, so that a calendar replaces what it has. */
  readonly uid: string;
  /** Grows with each change. */
  readonly sequence: number;
  readonly start: Date;
  readonly end: Date;
  readonly summary: string;
  readonly description: string;
  readonly url: string | null;
  readonly isCancelled: boolean;
  /** When the reminder comes: the evening before. */
  readonly remindAt: Date | null;
}

export interface Calendar {
  readonly name: string;
  /** When the calendar was written. */
  readonly stamp: Date;
  readonly events: readonly CalendarEvent[];
}

const LONGEST_LINE_OCTETS = 75;
const CRLF = "\r\n";

/**
 * Writes a calendar as iCalendar (RFC 5545). Times are in UTC, so that no time zone has to be described; lines end with
 * CRLF and are folded at 75 octets, never within a character.
 */
export function calendarText({ name, stamp, events }: Calendar): string {
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Gylebook//Brew days//EN",
    "CALSCALE:GREGORIAN",
    "METHOD:PUBLISH",
    `X-WR-CALNAME:${escaped(name)}`,
    ...events.flatMap((event) => eventLines(event, stamp)),
    "END:VCALENDAR",
  ];
  return lines.map((line) => folded(line) + CRLF).join("");
}

function eventLines(event: CalendarEvent, stamp: Date): string[] {
  return [
    "BEGIN:VEVENT",
    `UID:${escaped(event.uid)}`,
    `DTSTAMP:${utc(stamp)}`,
    `SEQUENCE:${String(event.sequence)}`,
    `DTSTART:${utc(event.start)}`,
    `DTEND:${utc(event.end)}`,
    `SUMMARY:${escaped(event.summary)}`,
    `DESCRIPTION:${escaped(event.description)}`,
    ...(event.url === null ? [] : [`URL:${event.url}`]),
    `STATUS:${event.isCancelled ? "CANCELLED" : "CONFIRMED"}`,
    "CATEGORIES:BREW DAY",
    "TRANSP:OPAQUE",
    ...(event.remindAt === null || event.isCancelled ? [] : alarmLines(event, event.remindAt)),
    "END:VEVENT",
  ];
}

function alarmLines({ summary }: CalendarEvent, at: Date): string[] {
  return [
    "BEGIN:VALARM",
    "ACTION:DISPLAY",
    `TRIGGER;VALUE=DATE-TIME:${utc(at)}`,
    `DESCRIPTION:${escaped(`Tomorrow: ${summary}`)}`,
    "END:VALARM",
  ];
}

/** "20270320T083000Z". */
function utc(at: Date): string {
  return `${at.toISOString().slice(0, 19).replaceAll(/[-:]/g, "")}Z`;
}

/** A text as a value: its commas, semicolons, backslashes and line breaks would otherwise end it. */
function escaped(text: string): string {
  return (
    text
      .replaceAll("\\", "\\\\")
      .replaceAll(";", "\\;")
      .replaceAll(",", "\\,")
      .replaceAll(/\r\n|\r|\n/g, "\\n")
      // Any other control character has no place in a calendar.
      .replaceAll(/\p{Cc}/gu, "")
  );
}

const encoder = new TextEncoder();

/** Lines after the first begin with a space, which counts as one of their octets. */
function folded(line: string): string {
  const pieces: string[] = [];
  let piece = "";
  let octets = 0;
  for (const character of line) {
    const size = encoder.encode(character).length;
    if (octets + size > LONGEST_LINE_OCTETS) {
      pieces.push(piece);
      piece = " ";
      octets = 1;
    }
    piece += character;
    octets += size;
  }
  return [...pieces, piece].join(CRLF);
}
