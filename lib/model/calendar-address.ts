const DAY_MS = 86_400_000;

/** A secret address stands in calendar programs and on their providers' servers: once a year it is made anew. */
const CALENDAR_ADDRESS_DAYS = 400;

/** When an address that was made then stops working. */
export function calendarAddressEnd(madeAt: Date): Date {
  return new Date(madeAt.getTime() + CALENDAR_ADDRESS_DAYS * DAY_MS);
}

/** An address that was made later than this works at the time. */
export function oldestCalendarAddress(now: Date): Date {
  return new Date(now.getTime() - CALENDAR_ADDRESS_DAYS * DAY_MS);
}
