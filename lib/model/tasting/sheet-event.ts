import type { Choice, Sheet } from "./sheet";

/** What every event of a tasting says: which, of which flight, from which device, and when by that device's clock. */
export interface TastingStamp {
  readonly id: string;
  readonly tastingId: string;
  readonly flightNo: number;
  readonly deviceId: string;
  /** Counts the events of a device from 1; null of a sheet that was entered from paper. */
  readonly deviceSeq: number | null;
  /** ISO 8601 with a zone. */
  readonly occurredAt: string;
}

/** A sheet as it stood when it was saved. */
export interface SheetSaved {
  readonly kind: "sheet";
  readonly entryNo: number;
  /** Handed in: it counts. */
  readonly isFinal: boolean;
  readonly payload: Sheet;
}

/** The glass that a judge chose of three. */
export interface ChoiceMade {
  readonly kind: "choice";
  readonly isFinal: boolean;
  readonly payload: Choice;
}

export type TastingContent = SheetSaved | ChoiceMade;
export type TastingEvent = TastingStamp & TastingContent;
