import type { ReactElement } from "react";
import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { Reading } from "@/lib/model/reading";
import { Quantity } from "../quantity";
import { ClockTime } from "./clock-time";

/**
 * One reading of the log with who gave it and when.
 *
 * - `counts` false for a reading that a later one corrects: it stays, struck through.
 */
export interface ReadingLineProps {
  readonly reading: Reading;
  readonly counts: boolean;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
  /** What was measured, where the place does not say it. */
  readonly label?: string | undefined;
}

export function ReadingLine({ reading, counts, dimension, preferences, label }: ReadingLineProps): ReactElement {
  const quantity = <Quantity value={reading.value} dimension={dimension} preferences={preferences} />;
  return (
    <li className={counts ? "py-1" : "py-1 text-muted"}>
      {label === undefined ? null : `${label} `}
      {counts ? (
        <strong>{quantity}</strong>
      ) : (
        <>
          <span className="sr-only">Corrected later: </span>
          <s>{quantity}</s>
        </>
      )}{" "}
      <span className="text-sm text-muted">
        {reading.actorName}, <ClockTime at={reading.occurredAt} withDay />, {reading.instrument}
        {reading.sampleC === null ? null : `, read as “${reading.entered}”`}
        {reading.note === "" ? null : `. “${reading.note}”`}
      </span>
    </li>
  );
}
