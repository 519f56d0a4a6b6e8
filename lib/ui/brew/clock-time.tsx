"use client";

import type { ReactElement } from "react";
import { localClockWords, utcClockWords } from "@/lib/model/clock-words";
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

export function ClockTime({ at, withDay = false }: ClockTimeProps): ReactElement {
  const words = useHydrated() ? localClockWords : utcClockWords;
  return <time dateTime={at.toISOString()}>{words(at, withDay)}</time>;
}
