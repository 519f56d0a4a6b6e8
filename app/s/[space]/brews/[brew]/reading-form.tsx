"use client";

import { useRef, type SubmitEvent } from "react";
import type { Preferences } from "@/lib/model/preferences";
import { amountUnitText, readDraft, type DraftErrors, type MeasuringPoint } from "@/lib/ui/brew/reading-draft";
import { needsSampleTemperature } from "@/lib/ui/brew/reading-instruments";
import { displayUnit } from "@/lib/ui/display-unit";
import { NumberField } from "@/lib/ui/number-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { DeliveryLine } from "./delivery-line";
import { ReadingDetails } from "./reading-details";
import type { RecordReading } from "./use-delivery";
import { useReading } from "./use-reading";

interface ReadingFormProps {
  readonly brewId: string;
  readonly point: MeasuringPoint;
  readonly preferences: Preferences;
  /** Tells this form's fields from those of the same quantity at another step. */
  readonly name: string;
  readonly record: RecordReading;
}

/** Where a reading is typed. It stays here until the server has it. */
export function ReadingForm({ name, ...a }: ReadingFormProps) {
  const { point, preferences } = a;
  const { state, type, save } = useReading(a);
  const form = useRef<HTMLFormElement>(null);
  const isHydrated = useHydrated();
  const { draft, errors, delivery } = state;

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    focusFirst(save(false));
  }

  function focusFirst(wrong: DraftErrors): void {
    const [field] = Object.keys(wrong);
    const control = form.current?.elements.namedItem(`${name}-${field ?? ""}`);
    if (control instanceof HTMLElement) control.focus();
  }

  return (
    <form ref={form} onSubmit={submit} noValidate className="no-print">
      <fieldset disabled={!isHydrated} className="flex flex-col gap-2">
        <div className="flex flex-wrap items-end gap-x-4 gap-y-2">
          <NumberField
            name={`${name}-amount`}
            label={point.label}
            unit={amountUnitText(draft, point, preferences)}
            value={draft.amount}
            onChange={(event) => type("amount", event.target.value)}
            onFocus={(event) => event.target.select()}
            error={errors.amount}
          />
          {needsSampleTemperature(point.quantity, draft.instrument) ? (
            <NumberField
              name={`${name}-sample`}
              label="Sample at"
              unit={displayUnit("temperature", preferences).unit}
              value={draft.sample}
              onChange={(event) => type("sample", event.target.value)}
              onFocus={(event) => event.target.select()}
              error={errors.sample}
            />
          ) : null}
          <SubmitButton pending="Saving…" isPending={delivery.kind === "saving"}>
            Save
            <span className="sr-only"> {point.label}</span>
          </SubmitButton>
        </div>
        <Correction {...a} draft={draft} />
        <DeliveryLine
          delivery={delivery}
          onKeep={() => save(true)}
          onChange={() => {
            type("amount", draft.amount);
            focusFirst({ amount: "" });
          }}
        />
        <ReadingDetails {...a} name={name} draft={draft} errors={errors} type={type} />
      </fieldset>
    </form>
  );
}

/** What the correction of an instrument makes of the number, while it is typed. */
function Correction({
  draft,
  point,
  preferences,
}: Pick<ReadingFormProps, "point" | "preferences"> & { readonly draft: Parameters<typeof readDraft>[0] }) {
  if (draft.amount.trim() === "") return null;
  const read = readDraft(draft, point, preferences);
  if (!read.ok || read.reading.correction === null) return null;
  return <output className="text-sm text-muted">{read.reading.correction}.</output>;
}
