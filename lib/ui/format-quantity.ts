import type { Dimension, Interval } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { digitsForInterval } from "./digits-for-interval";
import { displayUnit, type DisplayUnit } from "./display-unit";
import { fixedDigits } from "./fixed-digits";

/** A quantity as one person reads it. */
export interface FormattedQuantity {
  /** The number alone: "23.4", "1.048", "5 h 20". */
  readonly text: string;
  readonly unit: string;
  /** The number and its unit in words, the interval included: what a screen reader says. */
  readonly spoken: string;
  /** "± 0.6", or "22.8–24.3" when the interval is lopsided; null without an interval. */
  readonly interval: string | null;
}

/** A brew day is told in hours from here on. */
const HOURS_FROM_MIN = 180;

/**
 * Formats a value of the library's unit for one person. `interval` is in the same unit and decides the digits;
 * `digits` overrides both for a number that was typed, not predicted.
 */
export function formatQuantity(a: {
  readonly value: number;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
  readonly interval?: Interval | null | undefined;
  readonly digits?: number | undefined;
}): FormattedQuantity {
  const display = displayUnit(a.dimension, a.preferences);
  const interval = a.interval ?? null;
  const usual = a.digits ?? display.digits;
  const digits = interval === null ? usual : digitsForInterval(halfWidth(display, interval), usual);
  const shown = display.fromLibrary(a.value);
  if (a.dimension === "minutes" && shown >= HOURS_FROM_MIN) return inHours(shown, interval);
  const text = fixedDigits(shown, digits);
  const around = interval === null ? null : intervalText(display, a.value, interval, digits);
  return { text, unit: display.unit, spoken: spokenText(`${text} ${display.spoken}`, around), interval: around };
}

function halfWidth({ fromLibrary }: DisplayUnit, { low80, high80 }: Interval): number {
  return (fromLibrary(high80) - fromLibrary(low80)) / 2;
}

function intervalText(
  { fromLibrary }: DisplayUnit,
  value: number,
  { low80, high80 }: Interval,
  digits: number,
): string | null {
  const below = fixedDigits(fromLibrary(value) - fromLibrary(low80), digits);
  const above = fixedDigits(fromLibrary(high80) - fromLibrary(value), digits);
  if (below === above) return /[1-9]/.test(above) ? `± ${above}` : null;
  return `${fixedDigits(fromLibrary(low80), digits)}–${fixedDigits(fromLibrary(high80), digits)}`;
}

function spokenText(value: string, interval: string | null): string {
  if (interval === null) return value;
  const words = interval.startsWith("±") ? interval.replace("±", "plus or minus") : interval.replace("–", " to ");
  return `${value}, 80 per cent interval ${words}`;
}

function inHours(minutes: number, interval: Interval | null): FormattedQuantity {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  const half = interval === null ? 0 : Math.round((interval.high80 - interval.low80) / 2);
  const around = half > 0 ? `± ${half}` : null;
  return {
    text: `${hours} h ${rest}`,
    unit: "min",
    spoken: spokenText(`${hours} hours ${rest} minutes`, around),
    interval: around,
  };
}
