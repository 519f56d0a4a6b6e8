import type { ReactElement } from "react";
import { countdown, spokenCountdown } from "../alarm/countdown";
import { useOfDayTime } from "./day-context";

interface TimeLeftProps {
  /** ms since 1970 */
  readonly until: number;
  readonly className: string;
  /** Once it is over. */
  readonly overClassName?: string;
}

/** How long until an instant, to the second, and how long ago it was afterwards. It alone is drawn each second. */
export function TimeLeft({ until, className, overClassName = className }: TimeLeftProps): ReactElement {
  const left = until - useOfDayTime((now) => now);
  return (
    <>
      <span aria-hidden className={left < 0 ? overClassName : className}>
        {countdown(left)}
      </span>
      <span className="sr-only">{spokenCountdown(left)}</span>
    </>
  );
}
