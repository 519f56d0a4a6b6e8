"use client";

import type { ReactElement } from "react";
import { useHydrated } from "../use-hydrated";

/**
 * A time of day where the reader is. The server does not know that place, so it prints UTC and says so.
 *
 * - `withDay` for times that are not of today.
 */
export interface ClockTimeProps {
  readonly at: Date;
  readonly withDay?: boolean;
}

const CLOCK = { hour: "2-digit", minute: "2-digit", hourCycle: "h23" } as const;
const DAY = { weekday: "short", day: "numeric", month: "short" } as const;
const UTC = { timeZone: "UTC", timeZoneName: "short" } as const;

/** Each made once: making one takes a phone several milliseconds, and a brew day shows dozens of times every second. */
const formats = new Map<string, Intl.DateTimeFormat>();

function formatOf(withDay: boolean, isHydrated: boolean): Intl.DateTimeFormat {
  const key = `${String(withDay)} ${String(isHydrated)}`;
  const known = formats.get(key);
  if (known !== undefined) return known;
  const format = new Intl.DateTimeFormat("en-GB", {
    ...(withDay ? { ...DAY, ...CLOCK } : CLOCK),
    ...(isHydrated ? {} : UTC),
  });
  formats.set(key, format);
  return format;
}

export function ClockTime({ at, withDay = false }: ClockTimeProps): ReactElement {
  return <time dateTime={at.toISOString()}>{formatOf(withDay, useHydrated()).format(at)}</time>;
}
