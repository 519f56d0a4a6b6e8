"use client";

import type { FieldErrors } from "@/lib/model/field-errors";
import type { DayWindow } from "@/lib/model/plain-day";
import {
  FIGURE_WORDS,
  HELD_FIGURES,
  WATER_RULES,
  WATER_WORDS,
  type SharedBrewRules,
} from "@/lib/model/shared-brew-rules";
import { CheckboxField } from "@/lib/ui/checkbox-field";
import { SelectField } from "@/lib/ui/select-field";
import { TextField } from "@/lib/ui/text-field";

interface PlanFieldsProps {
  readonly window: DayWindow | null;
  readonly rules: SharedBrewRules;
  readonly errors: FieldErrors;
}

const WATER_OPTIONS = WATER_RULES.map((value) => ({ value, text: WATER_WORDS[value] }));

/** The days and the rules of a plan, in the form that makes the first version and in the one that makes another. */
export function PlanFields({ window, rules, errors }: PlanFieldsProps) {
  return (
    <>
      <DayFields window={window} errors={errors} />
      <HeldFields rules={rules} />
      <TextField
        name="rules.yeast.lot"
        label="Lot of the yeast"
        hint="Where all pitch from the same one; may stay empty."
        maxLength={80}
        autoComplete="off"
        defaultValue={rules.yeast.lot}
        error={errors["rules.yeast.lot"]}
      />
      <SelectField
        name="rules.water"
        label="Water"
        options={WATER_OPTIONS}
        defaultValue={rules.water}
        error={errors["rules.water"]}
      />
      <TextField
        name="rules.words"
        label="Another rule, in words"
        hint="Such as “pitch within an hour” or “no dry hops before day five”."
        maxLength={2000}
        autoComplete="off"
        defaultValue={rules.words}
        error={errors["rules.words"]}
      />
    </>
  );
}

function DayFields({ window, errors }: Pick<PlanFieldsProps, "window" | "errors">) {
  return (
    <fieldset className="flex flex-col gap-4">
      <legend className="mb-2 font-semibold">Days to brew</legend>
      <div className="grid gap-4 sm:grid-cols-2">
        <TextField
          name="window.from"
          label="First day"
          hint="May stay empty until the days are settled."
          type="date"
          defaultValue={window?.from}
          error={errors["window.from"]}
        />
        <TextField
          name="window.to"
          label="Last day"
          hint="Empty: the first day only."
          type="date"
          defaultValue={window?.to}
          error={errors["window.to"]}
        />
      </div>
    </fieldset>
  );
}

function HeldFields({ rules }: Pick<PlanFieldsProps, "rules">) {
  return (
    <fieldset>
      <legend className="mb-1 font-semibold">Held the same for all</legend>
      <p className="field-hint mb-1">What is not held follows each kettle, from the amounts as written by the litre.</p>
      {HELD_FIGURES.map((figure) => (
        <CheckboxField
          key={figure}
          name={`rules.${figure}`}
          label={FIGURE_WORDS[figure].charAt(0).toUpperCase() + FIGURE_WORDS[figure].slice(1)}
          defaultChecked={rules[figure]}
        />
      ))}
      <CheckboxField name="rules.yeast.same" label="Yeast" defaultChecked={rules.yeast.same} />
    </fieldset>
  );
}
