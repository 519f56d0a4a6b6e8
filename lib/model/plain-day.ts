import { z } from "zod";

const DAY = /^(\d{4})-(\d{2})-(\d{2})$/;
const EARLIEST = "2000-01-01";
const LATEST = "2199-12-31";
export const DAY_MS = 86_400_000;

/** A day of the calendar without a zone, as "2027-03-14". */
export function plainDay(label: string): z.ZodType<string> {
  return z
    .string({ error: `${label} is empty` })
    .trim()
    .min(1, `${label} is empty`)
    .refine(isDay, { error: ({ input }) => `${label} “${String(input).slice(0, 40)}” is not a day of the calendar` })
    .refine((day) => day >= EARLIEST && day <= LATEST, {
      error: ({ input }) => `${label} ${String(input)} is outside ${EARLIEST} to ${LATEST}`,
    });
}

/** The days from which a brewer chooses, the last one included. */
export interface DayWindow {
  readonly from: string;
  readonly to: string;
}

export const LONGEST_WINDOW_DAYS = 366;

export const dayWindow: z.ZodType<DayWindow> = z
  .strictObject({ from: plainDay("First day"), to: plainDay("Last day") })
  .refine(({ from, to }) => !isDay(from) || !isDay(to) || from <= to, {
    path: ["to"],
    message: "Last day is before the first day",
  })
  .refine(
    ({ from, to }) =>
      !isDay(from) ||
      !isDay(to) ||
      startOfDay(to).getTime() - startOfDay(from).getTime() <= LONGEST_WINDOW_DAYS * DAY_MS,
    {
      path: ["to"],
      message: `Last day is more than ${String(LONGEST_WINDOW_DAYS)} days after the first day`,
    },
  );

/** Midnight of the day in UTC: how the database and a date formatter take a day without a zone. */
export function startOfDay(day: string): Date {
  return new Date(`${day}T00:00:00Z`);
}

export function dayOf(midnight: Date): string {
  return midnight.toISOString().slice(0, 10);
}

const WORDS = new Intl.DateTimeFormat("en-GB", {
  weekday: "short",
  day: "numeric",
  month: "short",
  year: "numeric",
  timeZone: "UTC",
});

export function dayInWords(day: string): string {
  return WORDS.format(startOfDay(day));
}

export function windowInWords(window: DayWindow | null): string {
  if (window === null) return "no day yet";
  const [from, to] = [dayInWords(window.from), dayInWords(window.to)];
  return from === to ? from : `${from} to ${to}`;
}

// Date moves the 31st of June to July; a day of the calendar comes back as it was.
export function isDay(text: string): boolean {
  if (!DAY.test(text)) return false;
  const at = startOfDay(text);
  return !Number.isNaN(at.getTime()) && dayOf(at) === text;
}
