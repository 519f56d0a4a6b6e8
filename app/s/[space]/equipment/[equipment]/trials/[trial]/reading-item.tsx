"use client";

import { useState } from "react";
import type { Preferences } from "@/lib/model/preferences";
import type { TrialEntry } from "@/lib/model/trial/trial-entry";
import type { CurrentEntry } from "@/lib/model/trial/trial-log";
import { ClockTime } from "@/lib/ui/brew/clock-time";
import { valuesOf } from "./entry-of";
import type { FormField, FormValues } from "./form-shape";
import { MeasureForm } from "./measure-form";
import { readingText } from "./reading-text";

interface ReadingItemProps {
  readonly reading: CurrentEntry;
  readonly unit: "mm" | "mark";
  readonly fields: readonly FormField[];
  readonly preferences: Preferences;
  readonly mayWrite: boolean;
  /** How many of its uncertainties it lies from the fit; null where that is nothing to speak of. */
  readonly off: number | null;
  readonly onCorrect: (replaces: TrialEntry, values: FormValues, at: Date) => void;
  readonly onTakeBack: (entry: TrialEntry) => void;
}

/** One reading, with what it was before, and the way to correct it or to take it back. */
export function ReadingItem(props: ReadingItemProps) {
  const { reading, unit, preferences, mayWrite, off } = props;
  const { entry, before } = reading;
  const [isOpen, setOpen] = useState(false);
  const text = readingText(entry, unit, preferences);
  return (
    <li className="border-b border-rule py-2">
      <div className="flex flex-wrap items-center justify-between gap-x-4 gap-y-1">
        <span>
          <ClockTime at={new Date(entry.occurredAt)} /> <strong>{text}</strong>
        </span>
        {mayWrite ? (
          <button type="button" className="button button-quiet" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
            Change<span className="sr-only"> {text}</span>
          </button>
        ) : null}
      </div>
      {before.length === 0 ? null : (
        <p className="text-sm text-muted">
          Corrected; before: {before.map((each) => readingText(each, unit, preferences)).join(", ")}.
        </p>
      )}
      {off === null ? null : (
        <p className="text-sm text-accent">
          This lies {off} times its uncertainty from the curve. Look whether it was read and typed right; it is kept
          either way.
        </p>
      )}
      {isOpen ? <Correction {...props} onDone={() => setOpen(false)} /> : null}
    </li>
  );
}

function Correction(props: ReadingItemProps & { readonly onDone: () => void }) {
  const { reading, fields, preferences, onCorrect, onTakeBack, onDone } = props;
  const { entry } = reading;
  return (
    <div className="mt-2">
      <MeasureForm
        legend="Correct this reading"
        name={`fix-${entry.id}`}
        fields={fields}
        values={valuesOf(entry)}
        preferences={preferences}
        button="Save the correction"
        at={entry.occurredAt}
        isKept
        onSave={(values, at) => {
          onCorrect(entry, values, at);
          onDone();
        }}
      >
        <button type="button" className="button button-attention" onClick={() => onTakeBack(entry)}>
          Take it back
        </button>
      </MeasureForm>
    </div>
  );
}
