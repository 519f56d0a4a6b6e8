import type { ReactElement } from "react";
import type { LoggedReading } from "@/lib/model/log/logged-readings";
import type { MeasuringPoint } from "@/lib/ui/brew/reading-draft";
import { seriesPoint } from "@/lib/ui/brew/series-point";
import { useDay } from "./day-context";
import { MainButton } from "./main-button";
import type { Moves } from "./use-moves";

/** What is about to be entered. */
export type Entry =
  | {
      readonly kind: "reading";
      readonly point: MeasuringPoint;
      readonly step: string | null;
      /** The reading that this one corrects; null for a new one. */
      readonly target: LoggedReading | null;
    }
  | { readonly kind: "note" | "photo" | "timer"; readonly step: string | null }
  | { readonly kind: "void"; readonly target: LoggedReading };

export type OnEnter = (entry: Entry) => void;

/** What a hand reaches at any moment of the day, at the lower edge of a phone. */
export function EntryBar({ onEnter, moves }: { readonly onEnter: OnEnter; readonly moves: Moves }): ReactElement {
  const { day } = useDay();
  const step = day.running.at(-1)?.step.id ?? null;
  return (
    <section className="day-bar no-print" aria-label="At hand">
      <MainButton moves={moves} />
      <div className="day-bar-entries">
        <button
          type="button"
          className="button day-bar-button"
          onClick={() =>
            onEnter({ kind: "reading", point: seriesPoint("kettle.temperature", null), step, target: null })
          }
        >
          Temperature
        </button>
        <button
          type="button"
          className="button button-quiet day-bar-button"
          onClick={() => onEnter({ kind: "timer", step })}
        >
          Timer
        </button>
        <button
          type="button"
          className="button button-quiet day-bar-button"
          onClick={() => onEnter({ kind: "note", step })}
        >
          Note
        </button>
        <button
          type="button"
          className="button button-quiet day-bar-button"
          onClick={() => onEnter({ kind: "photo", step })}
        >
          Photo
        </button>
      </div>
    </section>
  );
}
