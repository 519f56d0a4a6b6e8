"use client";

import { useState, type SubmitEvent } from "react";
import type { Recipe } from "@/lib/calc/ledger";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { emptyPitch, readPitch, type PitchDraft } from "@/lib/ui/cellar/pitch-draft";
import { ErrorSummary } from "@/lib/ui/error-summary";
import { SubmitButton } from "@/lib/ui/submit-button";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { EntryLine } from "../entry-line";
import type { RecordReading } from "../use-delivery";
import { useLogEntry } from "../use-log-entry";
import { PitchFields } from "./pitch-fields";

interface PitchFormProps {
  readonly brewId: string;
  readonly yeast: Recipe["yeast"];
  readonly isOpen: boolean;
  readonly preferences: Preferences;
  readonly record: RecordReading;
}

const NONE: FieldErrors = {};

/** What was pitched: yeast, cells, starter, temperature. */
export function PitchForm({ brewId, yeast, isOpen, preferences, record }: PitchFormProps) {
  const [draft, setDraft] = useState(() => emptyPitch(yeast, preferences));
  const [errors, setErrors] = useState(NONE);
  const { delivery, send, edited } = useLogEntry(brewId, record);
  const isHydrated = useHydrated();

  function type(change: Partial<PitchDraft>): void {
    setDraft({ ...draft, ...change });
    if (delivery.kind !== "editing") edited();
  }

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    const read = readPitch(draft, preferences);
    setErrors(read.ok ? NONE : read.errors);
    if (read.ok) void send([{ content: read.pitch, at: read.at }]);
  }

  return (
    <details className="no-print mt-3" open={isOpen}>
      <summary className="target">Log the pitch</summary>
      <form onSubmit={submit} noValidate>
        <fieldset disabled={!isHydrated} className="mt-3 flex flex-col gap-4">
          <legend className="sr-only">Pitch</legend>
          <ErrorSummary errors={errors} />
          <PitchFields draft={draft} errors={errors} preferences={preferences} type={type} />
          <div>
            <SubmitButton pending="Saving…" isPending={delivery.kind === "saving"}>
              Save the pitch
            </SubmitButton>
          </div>
          <EntryLine delivery={delivery} />
        </fieldset>
      </form>
    </details>
  );
}
