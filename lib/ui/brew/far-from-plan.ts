import type { Dimension, Interval } from "@/lib/calc/ledger";
import { Z80 } from "@/lib/calc/statistics";
import type { Preferences } from "@/lib/model/preferences";
import { formatDifference } from "../format-difference";

/** What the plan says of a quantity, in the library's unit. */
export interface Expected {
  readonly value: number;
  readonly interval: Interval | null;
}

/** Beyond this many standard deviations a slip of the pen is likelier than a surprise; common practice, no source. */
const FAR = 4;

/**
 * A question to ask once about a reading far outside what the plan and the instrument allow; null when there is nothing
 * to ask. The reading is kept either way.
 */
export function farFromPlan(a: {
  readonly value: number;
  readonly sd: number;
  readonly expected: Expected | null;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
}): string | null {
  const { value, sd, expected, dimension, preferences } = a;
  if (expected === null) return null;
  const planSd = expected.interval === null ? 0 : (expected.interval.high80 - expected.interval.low80) / 2 / Z80;
  // A plan or an instrument that claims to be exact is still wrong by some per cent.
  const least = Math.abs(expected.value) * 0.02;
  const isFar = Math.abs(value - expected.value) > FAR * Math.hypot(planSd, sd, least);
  if (!isFar) return null;
  const { text, unit } = formatDifference({ value, from: expected.value, dimension, preferences });
  const side = text.startsWith("−") ? "below" : "above";
  return `That is ${text.replace(/^[+−]/, "")} ${unit} ${side} the plan. Keep it?`;
}
