"use client";

import type { Preferences } from "@/lib/model/preferences";
import { ActionForm } from "@/lib/ui/action-form";
import { Notice } from "@/lib/ui/notice";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { savePreferencesAction } from "./actions";

const FIELDS = [
  {
    name: "units",
    label: "Units",
    options: [
      { value: "metric", text: "Litres, kilograms, °C" },
      { value: "us", text: "US gallons, pounds, °F" },
    ],
  },
  {
    name: "gravity",
    label: "Gravity",
    options: [
      { value: "sg", text: "Specific gravity, 1.048" },
      { value: "plato", text: "Degrees Plato, 12 °P" },
    ],
  },
  {
    name: "colour",
    label: "Colour",
    options: [
      { value: "ebc", text: "EBC" },
      { value: "srm", text: "SRM" },
    ],
  },
  {
    name: "theme",
    label: "Theme",
    options: [
      { value: "auto", text: "As this device is set" },
      { value: "light", text: "Light" },
      { value: "dark", text: "Dark, for the cellar" },
    ],
  },
] as const satisfies readonly { readonly name: keyof Preferences; readonly label: string; readonly options: unknown }[];

/** What is stored and computed does not change with it, only how it is shown and read. */
export function PreferencesForm({ preferences }: { readonly preferences: Preferences }) {
  return (
    <ActionForm action={savePreferencesAction}>
      {({ errors, result, isPending }) => (
        <>
          <div className="grid gap-4 sm:grid-cols-2">
            {FIELDS.map(({ name, label, options }) => (
              <SelectField
                key={name}
                name={name}
                label={label}
                options={options}
                defaultValue={preferences[name]}
                error={errors[name]}
              />
            ))}
          </div>
          {result?.status === "ok" && !isPending ? <Notice live>Saved.</Notice> : null}
          <div>
            <SubmitButton pending="Saving…" isPending={isPending}>
              Save
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
