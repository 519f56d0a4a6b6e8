import type { Reading } from "../reading";
import type { LoggedQuantity, MeasuredKind } from "./series";

/** What every event of a log says: which, of which brew, from which device, and when it happened by that device's clock. */
export interface EventStamp {
  readonly id: string;
  readonly brewId: string;
  readonly deviceId: string;
  /** Counts the events of a device from 1; null from a sensor, which keeps no count. */
  readonly deviceSeq: number | null;
  /** ISO 8601 with a zone. */
  readonly occurredAt: string;
}

/** A measured value, in the ledger's unit. */
export interface Measured {
  readonly kind: MeasuredKind;
  readonly quantity: LoggedQuantity;
  readonly value: number;
  /** Stated standard uncertainty, in the unit of the value. */
  readonly sd: number;
  readonly instrument: Reading["instrument"];
  readonly sampleC: number | null;
  readonly note: string;
  /** What was typed, as it was typed. */
  readonly entered: string;
  /** The step at which it was measured; null elsewhere. */
  readonly step: string | null;
}

export const STEP_ACTS = ["begun", "done", "left out", "taken back", "added"] as const;

/** What a brewer did with a step of the run sheet. */
export interface StepAct {
  readonly kind: "step";
  readonly step: string;
  readonly act: (typeof STEP_ACTS)[number];
  /** Why it was left out. */
  readonly why: string;
  /** Of a step that the brewer added. */
  readonly title: string;
  readonly minutes: number;
  /** The step behind which an added one stands; null at the start of the day. */
  readonly after: string | null;
}

export const TIMER_ACTS = ["set", "acknowledged", "cleared"] as const;

/** An alarm at an instant. The end is stated, never counted down. */
export interface TimerAct {
  readonly kind: "timer";
  readonly timer: string;
  readonly act: (typeof TIMER_ACTS)[number];
  readonly label: string;
  /** ISO 8601; null except where it is set. */
  readonly dueAt: string | null;
  readonly step: string | null;
}

export const ADDITION_UNITS = ["kg", "g", "L", "mL", "each"] as const;
export const ADDITION_PLACES = ["kettle", "fermenter", "package"] as const;

export interface AdditionMade {
  readonly kind: "addition";
  readonly name: string;
  readonly amount: number;
  readonly unit: (typeof ADDITION_UNITS)[number];
  readonly at: (typeof ADDITION_PLACES)[number];
  readonly note: string;
}

export interface Pitched {
  readonly kind: "pitch";
  readonly yeast: string;
  /** Billion; null when nobody counted. */
  readonly cells: number | null;
  /** Volume of the starter, 0 without one. */
  readonly starterL: number;
  readonly celsius: number;
  readonly note: string;
}

export const PACKAGING_METHODS = ["priming", "forced"] as const;

export interface FilledContainer {
  readonly name: string;
  readonly litres: number;
  readonly count: number;
  /** Gauge pressure that its maker states at most; null where nothing is stated. */
  readonly ratedBar: number | null;
}

export interface Packaged {
  readonly kind: "package";
  readonly containers: readonly FilledContainer[];
  readonly volumesCo2: number;
  readonly method: (typeof PACKAGING_METHODS)[number];
  readonly sugar: string;
  readonly sugarGrams: number;
  /** Warmest that the beer has been since fermentation ended: what gas it lost then does not come back. */
  readonly celsius: number;
  /** Warmest place where the full containers will stand: the pressure in them is that of this temperature. */
  readonly storageC: number;
  /** What stayed behind or was spilt, L. */
  readonly lostL: number;
  /** Who goes over a stated pressure signs with a name and says why; the log keeps who that was. */
  readonly override: { readonly name: string; readonly why: string } | null;
  /** Why it is packaged although the gravity was not seen to stand still. */
  readonly early: { readonly why: string } | null;
  readonly note: string;
}

export interface NoteWritten {
  readonly kind: "note";
  readonly text: string;
  readonly step: string | null;
}

export interface PhotoTaken {
  readonly kind: "photo";
  readonly photoId: string;
  readonly caption: string;
  readonly step: string | null;
}

/** A reading that takes the place of an earlier one. The earlier one stays in the log. */
export interface Correction {
  readonly kind: "correct";
  readonly targetId: string;
  /** The corrections of the same reading that its writer had seen. */
  readonly seen: readonly string[];
  readonly measured: Measured;
}

/** Says that an event does not count. It stays in the log. */
export interface Voided {
  readonly kind: "void";
  readonly targetId: string;
  readonly seen: readonly string[];
  readonly why: string;
}

export type EventContent =
  Measured | StepAct | TimerAct | AdditionMade | Pitched | Packaged | NoteWritten | PhotoTaken | Correction | Voided;

/** One event of a brew's log. It is made once and never changed. */
export type LogEvent = EventStamp & EventContent;

export const MEASURED_KINDS: readonly MeasuredKind[] = [
  "volume",
  "temperature",
  "gravity",
  "duration",
  "ph",
  "pressure",
  "energy",
];

export function isMeasured(event: EventContent): event is Measured {
  return MEASURED_KINDS.some((kind) => kind === event.kind);
}
