const pad = (value: number): string => String(value).padStart(2, "0");

/** A time as the field of a clock takes it, where the reader is: "10:05:30". */
export function clockText(iso: string): string {
  const at = new Date(iso);
  return [at.getHours(), at.getMinutes(), at.getSeconds()].map(pad).join(":");
}

/**
 * The moment of a clock time on the day of another moment; empty or unreadable is that moment itself.
 *
 * A trial that runs past midnight has readings of before: a time more than half a day ahead is meant for the day before.
 */
export function momentOf(clock: string, near: Date): Date {
  const [, hours, minutes, seconds = "0"] = /^(\d{2}):(\d{2})(?::(\d{2}))?/.exec(clock) ?? [];
  if (hours === undefined || minutes === undefined) return near;
  const at = new Date(near);
  at.setHours(Number(hours), Number(minutes), Number(seconds), 0);
  if (at.getTime() - near.getTime() > 12 * 3_600_000) at.setDate(at.getDate() - 1);
  return at;
}
