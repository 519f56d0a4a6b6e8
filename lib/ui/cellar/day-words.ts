import { DAY_MS } from "@/lib/model/plain-day";

// One language and one zone, so that the server and the browser print the same day.
const DAY_AND_MONTH = new Intl.DateTimeFormat("en-GB", { day: "numeric", month: "long", timeZone: "UTC" });
const DAY_ONLY = new Intl.DateTimeFormat("en-GB", { day: "numeric", timeZone: "UTC" });
const MONTH_ONLY = new Intl.DateTimeFormat("en-GB", { month: "long", year: "numeric", timeZone: "UTC" });

/** "6 December", some days after a moment. */
export function dayAfter(since: number, days: number): string {
  return DAY_AND_MONTH.format(new Date(since + days * DAY_MS));
}

/** "4 to 8 December", "29 November to 2 December", or words for less than a day. */
export function spanAfter(since: number, from: number, to: number): string {
  const [first, last] = [new Date(since + from * DAY_MS), new Date(since + to * DAY_MS)];
  if (DAY_AND_MONTH.format(first) === DAY_AND_MONTH.format(last)) return "give or take less than a day";
  const isOneMonth = MONTH_ONLY.format(first) === MONTH_ONLY.format(last);
  return `${(isOneMonth ? DAY_ONLY : DAY_AND_MONTH).format(first)} to ${DAY_AND_MONTH.format(last)}`;
}
