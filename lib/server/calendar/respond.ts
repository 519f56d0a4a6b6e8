import "server-only";
import { calendarText, type CalendarEvent } from "@/lib/model/calendar";

/** A calendar as an answer. Nobody between keeps it: it is one person's. */
export function calendarResponse(a: {
  readonly name: string;
  readonly fileName: string;
  readonly events: readonly CalendarEvent[];
}): Response {
  const text = calendarText({ name: a.name, stamp: new Date(), events: a.events });
  return new Response(text, {
    headers: {
      "content-type": "text/calendar; charset=utf-8",
      "content-disposition": `attachment; filename="${a.fileName}"`,
      "cache-control": "private, no-store",
      "x-robots-tag": "noindex",
    },
  });
}
