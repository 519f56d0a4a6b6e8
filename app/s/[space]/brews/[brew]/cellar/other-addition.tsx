"use client";

import { useState, type ChangeEvent, type SubmitEvent } from "react";
import { ADDITION_UNITS, type AdditionMade } from "@/lib/model/log/log-event";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { useHydrated } from "@/lib/ui/use-hydrated";

interface OtherAdditionProps {
  readonly log: (said: Pick<AdditionMade, "name" | "amount" | "unit">, at: Date | null) => Promise<boolean>;
  readonly isSaving: boolean;
}

const EMPTY = { name: "", amount: "", unit: "g", at: "" };
const UNITS = ADDITION_UNITS.map((each) => ({ value: each, text: each }));

/** Anything that goes into the fermenter and is no dry hop of the recipe. */
export function OtherAddition({ log, isSaving }: OtherAdditionProps) {
  const [draft, setDraft] = useState(EMPTY);
  const [error, setError] = useState<string | undefined>();
  const isHydrated = useHydrated();
  const field = (name: keyof typeof EMPTY) => ({
    name: `addition-${name}`,
    value: draft[name],
    onChange: (event: ChangeEvent<HTMLInputElement | HTMLSelectElement>): void =>
      setDraft({ ...draft, [name]: event.target.value }),
  });

  async function submit(event: SubmitEvent<HTMLFormElement>): Promise<void> {
    event.preventDefault();
    const amount = Number(draft.amount.replace(",", "."));
    const isAmount = draft.amount.trim() !== "" && amount > 0 && amount <= 100_000;
    setError(isAmount ? undefined : `Amount “${draft.amount}” is not a number above 0 and up to 100000`);
    const unit = ADDITION_UNITS.find((each) => each === draft.unit) ?? "g";
    const at = draft.at === "" ? null : new Date(draft.at);
    if (isAmount && (await log({ name: draft.name, amount, unit }, at))) setDraft(EMPTY);
  }

  return (
    <form onSubmit={(event) => void submit(event)} noValidate>
      <fieldset disabled={!isHydrated} className="mt-3 flex flex-col gap-4">
        <legend className="sr-only">Addition</legend>
        <TextField label="What" maxLength={120} {...field("name")} />
        <div className="grid grid-cols-2 gap-4">
          <NumberField label="Amount" unit="" error={error} {...field("amount")} />
          <SelectField label="Unit" options={UNITS} {...field("unit")} />
        </div>
        <TextField label="Time of the addition" hint="Empty means now." type="datetime-local" {...field("at")} />
        <div>
          <SubmitButton pending="Saving…" isPending={isSaving}>
            Save the addition
          </SubmitButton>
        </div>
      </fieldset>
    </form>
  );
}
