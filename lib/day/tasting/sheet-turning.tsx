import type { ReactElement } from "react";
import type { ServedFlight } from "@/lib/model/tasting/judge-sheet";
import { entryHash } from "./use-place";

interface SheetTurningProps {
  readonly flight: ServedFlight;
  readonly at: number;
}

/** The way to the glass before and after this one, and to all of them. */
export function SheetTurning({ flight, at }: SheetTurningProps): ReactElement {
  const before = flight.entries[at - 1];
  const after = flight.entries[at + 1];
  const link = (entryNo: number): string => entryHash(flight.flightNo, entryNo);
  return (
    <nav aria-label="Glasses" className="judging-turning no-print">
      {before === undefined ? (
        <span />
      ) : (
        <a className="target" href={link(before.entryNo)}>
          ‹ {before.entryNo}
        </a>
      )}
      <a className="target" href="#all">
        Glass {at + 1} of {flight.entries.length}: all
      </a>
      {after === undefined ? (
        <span />
      ) : (
        <a className="target" href={link(after.entryNo)}>
          {after.entryNo} ›
        </a>
      )}
    </nav>
  );
}
