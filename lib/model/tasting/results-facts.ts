import type { BeerFigure } from "./prepare-figures";
import type { Choice, Sheet } from "./sheet";
import type { Flight, RevealedEntry } from "./tasting";

/** A judge as results name him or her: by a seat, which is the same in all flights of a tasting. */
export interface Seat {
  readonly judgeId: string;
  readonly seat: number;
  readonly name: string;
}

/** A sheet that was handed in. */
export interface CountedSheet {
  readonly judgeId: string;
  readonly entryNo: number;
  readonly total: number;
  readonly sheet: Sheet;
  /** Who entered it from paper; null where the judge wrote it. */
  readonly enteredBy: string | null;
}

/** The answer of a triangle or duo-trio that was handed in. */
export interface CountedChoice {
  readonly judgeId: string;
  readonly choice: Choice;
  readonly isRight: boolean;
  /** Who entered it from paper; null where the judge wrote it. */
  readonly enteredBy: string | null;
}

export interface JudgedEntry extends RevealedEntry {
  /** As measured where the log has it, otherwise as computed or stated. */
  readonly figures: readonly BeerFigure[];
  /** Who brewed it, alone or with others; nobody of a beer from elsewhere. */
  readonly brewerIds: readonly string[];
}

/** Everything about one flight that its results are made of. */
export interface FlightFacts extends Pick<Flight, "flightNo" | "title" | "kind"> {
  readonly entries: readonly JudgedEntry[];
  readonly judges: readonly Seat[];
  /** Who was served what: the sheets that were to come. */
  readonly served: readonly { readonly judgeId: string; readonly entryNo: number }[];
  readonly sheets: readonly CountedSheet[];
  readonly choices: readonly CountedChoice[];
  /** Sheets that were begun and never handed in; they do not count. */
  readonly begun: readonly { readonly judgeId: string; readonly entryNo: number }[];
}

/** A revealed tasting with all that judges handed in. */
export interface TastingFacts {
  readonly id: string;
  readonly title: string;
  readonly heldOn: string | null;
  readonly revealedAt: Date;
  readonly seed: number;
  readonly flights: readonly FlightFacts[];
}
