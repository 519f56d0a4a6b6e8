import type { ReactElement } from "react";
import type { ExpectedTime } from "@/lib/calc/runsheet";
import { ClockTime } from "@/lib/ui/brew/clock-time";

const MINUTE_MS = 60_000;
const SURE_MIN = 1;

/** An expected time with how sure it is: “about 16:40, ±15 min”. Four times out of five it is within that. */
export function AboutTime({
  startedAt,
  time,
}: {
  readonly startedAt: number;
  readonly time: ExpectedTime;
}): ReactElement {
  const half = Math.round((time.high80 - time.low80) / 2);
  const at = new Date(startedAt + Math.round(time.min) * MINUTE_MS);
  if (half < SURE_MIN) return <ClockTime at={at} />;
  return (
    <span>
      about <ClockTime at={at} />, ±{half} min
    </span>
  );
}
