const DAYS = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"] as const;
const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sept", "Oct", "Nov", "Dec"] as const;

/** What the clock and the calendar of a place show. */
interface Shown {
  readonly weekday: number;
  readonly day: number;
  readonly month: number;
  readonly hour: number;
  readonly minute: number;
}

/**
 * A moment where the reader is: "16:40", or "Sat 28 Nov, 16:40" where the day matters. Put together here: a phone takes a
 * third of a second to load its formatter of dates, and the brew day is waited for.
 */
export function localClockWords(at: Date, withDay: boolean): string {
  const date = { weekday: at.getDay(), day: at.getDate(), month: at.getMonth() };
  return words({ ...date, hour: at.getHours(), minute: at.getMinutes() }, withDay);
}

/** The same where nobody knows yet where the reader is. It says that it is UTC. */
export function utcClockWords(at: Date, withDay: boolean): string {
  const date = { weekday: at.getUTCDay(), day: at.getUTCDate(), month: at.getUTCMonth() };
  return `${words({ ...date, hour: at.getUTCHours(), minute: at.getUTCMinutes() }, withDay)} UTC`;
}

function words({ weekday, day, month, hour, minute }: Shown, withDay: boolean): string {
  const clock = `${twoDigits(hour)}:${twoDigits(minute)}`;
  return withDay ? `${String(DAYS[weekday])} ${String(day)} ${String(MONTHS[month])}, ${clock}` : clock;
}

function twoDigits(value: number): string {
  return String(value).padStart(2, "0");
}
