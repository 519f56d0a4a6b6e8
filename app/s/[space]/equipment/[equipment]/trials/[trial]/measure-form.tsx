"use client";

import { useEffect, useRef, useState, type ReactNode, type SubmitEvent } from "react";
import type { Preferences } from "@/lib/model/preferences";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { ClockField } from "./clock-field";
import { clockText, momentOf } from "./clock-text";
import type { FormField, FormValues } from "./form-shape";
import { MeasureFields } from "./measure-fields";
import { useMeasureForm } from "./use-measure-form";

interface MeasureFormProps {
  readonly legend: string;
  readonly name: string;
  readonly fields: readonly FormField[];
  readonly values: FormValues;
  readonly preferences: Preferences;
  readonly button: string;
  /** The moment of an entry that is corrected; null for a new one. Left out where no time is asked for. */
  readonly at?: string | null;
  readonly isKept: boolean;
  readonly onSave: (values: FormValues, at: Date) => void;
  readonly children?: ReactNode;
}

/**
 * Numbers that are typed and saved with one tap, which is also the time of the reading.
 *
 * - `isKept` leaves the numbers as they are after saving, for what is stated once.
 */
export function MeasureForm(props: MeasureFormProps) {
  const { legend, name, fields, preferences, button, at, isKept, onSave } = props;
  const form = useMeasureForm(props);
  const [clock, setClock] = useState(() => (typeof at === "string" ? clockText(at) : ""));
  const element = useRef<HTMLFormElement>(null);
  const isHydrated = useHydrated();

  useEffect(() => {
    if (form.refusals > 0) element.current?.querySelector<HTMLElement>("[aria-invalid]")?.focus();
  }, [form.refusals]);

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    const pressed = new Date();
    const values = form.read();
    if (values === null) return;
    const unchanged = typeof at === "string" && clock === clockText(at);
    onSave(values, unchanged ? new Date(at) : momentOf(clock, typeof at === "string" ? new Date(at) : pressed));
    if (isKept) return;
    form.clear();
    setClock("");
    element.current?.querySelector("input")?.focus();
  }

  return (
    <form ref={element} onSubmit={submit} noValidate className="no-print">
      <fieldset disabled={!isHydrated} className="flex flex-col gap-3">
        <legend className="mb-2 font-semibold">{legend}</legend>
        <MeasureFields {...{ fields, form, name, preferences }} />
        {at === undefined ? null : <ClockField name={`${name}-clock`} value={clock} onChange={setClock} />}
        <div className="flex flex-wrap gap-3">
          <button type="submit" className="button">
            {button}
          </button>
          {props.children}
        </div>
      </fieldset>
    </form>
  );
}
