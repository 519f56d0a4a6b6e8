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

export function ClockTime({ at, withDay = false }: ClockTimeProps): ReactElement {
  const isHydrated = useHydrated();
  const parts = withDay ? { ...DAY, ...CLOCK } : CLOCK;
  const zone = isHydrated ? {} : ({ timeZone: "UTC", timeZoneName: "short" } as const);
  return <time dateTime={at.toISOString()}>{new Intl.DateTimeFormat("en-GB", { ...parts, ...zone }).format(at)}</time>;
}
