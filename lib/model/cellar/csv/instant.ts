import { instantOf } from "../../zoned-time";

const ZONED = /^\d{4}-\d\d-\d\d[T ]\d\d:\d\d(?::\d\d(?:\.\d+)?)?(?:Z|[+-]\d\d:?\d\d)$/;
const YEAR_FIRST = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:[T ,]+(\d{1,2}):(\d\d)(?::(\d\d)(?:\.\d+)?)?)?$/;
const DAY_FIRST = /^(\d{1,2})[-/.](\d{1,2})[-/.](\d{4})(?:[T ,]+(\d{1,2}):(\d\d)(?::(\d\d)(?:\.\d+)?)?)?$/;
const EPOCH_S = /^\d{10}$/;
const EPOCH_MS = /^\d{13}$/;

/**
 * The moment that a cell names; null for none. Without a zone of its own a time is of `zone`; a day with slashes or points
 * has the day before the month, and one with nothing else is its first minute. Ten digits are seconds since 1970, thirteen
 * are milliseconds.
 */
export function instantIn(text: string, zone: string): Date | null {
  if (EPOCH_S.test(text)) return new Date(Number(text) * 1000);
  if (EPOCH_MS.test(text)) return new Date(Number(text));
  if (ZONED.test(text)) {
    const at = new Date(text.replace(" ", "T"));
    return Number.isNaN(at.getTime()) ? null : at;
  }
  const [, ...yearFirst] = YEAR_FIRST.exec(text) ?? [];
  const [, ...dayFirst] = DAY_FIRST.exec(text) ?? [];
  if (yearFirst.length > 0) return localInstant(yearFirst, zone);
  const [day, month, year, ...time] = dayFirst;
  return dayFirst.length === 0 ? null : localInstant([year, month, day, ...time], zone);
}

function localInstant(parts: readonly (string | undefined)[], zone: string): Date | null {
  const [year = "", month = "", day = "", hour = "0", minute = "00", second = "00"] = parts;
  const two = (text: string): string => text.padStart(2, "0");
  const date = `${year}-${two(month)}-${two(day)}`;
  const time = `${two(hour)}:${minute}`;
  if (Number.isNaN(Date.parse(`${date}T${time}:${second}Z`)) || Number(hour) > 23) return null;
  // The 31st of a short month is read as a day of the next.
  if (new Date(`${date}T00:00:00Z`).toISOString().slice(0, 10) !== date) return null;
  const at = instantOf({ day: date, time, zone });
  return at === null ? null : new Date(at.getTime() + Number(second) * 1000);
}
