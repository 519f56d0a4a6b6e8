"use client";

import { useEffect, useRef, type SubmitEvent } from "react";
import type { Preferences } from "@/lib/model/preferences";
import type { MeasuringPoint } from "@/lib/ui/brew/reading-draft";
import { SubmitButton } from "@/lib/ui/submit-button";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { DeliveryLine } from "./delivery-line";
import { ReadingAmount } from "./reading-amount";
import { ReadingCorrection } from "./reading-correction";
import { ReadingDetails } from "@/lib/ui/brew/reading-details";
import type { RecordReading } from "./use-delivery";
import { useReading, type ComposeReading } from "./use-reading";

interface ReadingFormProps {
  readonly brewId: string;
  readonly point: MeasuringPoint;
  readonly preferences: Preferences;
  /** Tells this form's fields from those of the same quantity at another step. */
  readonly name: string;
  readonly record: RecordReading;
  readonly compose?: ComposeReading;
}

/** Where a reading is typed. It stays here until the server has it. */
export function ReadingForm({ name, ...a }: ReadingFormProps) {
  const { point, preferences } = a;
  const { state, type, save } = useReading(a);
  const { draft, errors, delivery, refusals } = state;
  const form = useRef<HTMLFormElement>(null);
  const isHydrated = useHydrated();

  useEffect(() => {
    if (refusals > 0) form.current?.querySelector<HTMLElement>("[aria-invalid]")?.focus();
  }, [refusals]);

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    save(false);
  }

  function change(): void {
    type("amount", draft.amount);
    form.current?.querySelector("input")?.focus();
  }

  const fields = { name, point, preferences, draft, errors, type };
  return (
    <form ref={form} onSubmit={submit} noValidate className="no-print">
      <fieldset disabled={!isHydrated} className="flex flex-col gap-2">
        <legend className="sr-only">Reading: {point.label}</legend>
        <div className="reading-amount flex flex-wrap items-end gap-x-4 gap-y-2">
          <ReadingAmount {...fields} />
          <SubmitButton pending="Saving…" isPending={delivery.kind === "saving"}>
            Save
            <span className="sr-only"> {point.label}</span>
          </SubmitButton>
        </div>
        <ReadingCorrection draft={draft} point={point} preferences={preferences} />
        <DeliveryLine delivery={delivery} onKeep={() => save(true)} onChange={change} />
        <ReadingDetails {...fields} />
      </fieldset>
    </form>
  );
}
