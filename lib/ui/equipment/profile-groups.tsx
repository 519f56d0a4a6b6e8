"use client";

import type { ReactElement } from "react";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { SelectField } from "../select-field";
import type { EquipmentDraft } from "./equipment-draft";
import { PROFILE_GROUPS, type ProfileField } from "./figure-groups";
import { ProfileRow } from "./profile-row";

interface ProfileGroupsProps {
  readonly draft: EquipmentDraft;
  readonly problems: FieldErrors;
  readonly preferences: Preferences;
  readonly onChange: (draft: EquipmentDraft) => void;
}

/** Every figure of a profile, in the order of the brew day. */
export function ProfileGroups(props: ProfileGroupsProps): ReactElement {
  return (
    <>
      {PROFILE_GROUPS.map(({ id, heading, fields }) => (
        <section key={id} aria-labelledby={`group-${id}`} className="fields-dense fields-named">
          <h2 id={`group-${id}`} className="mb-3 border-b border-ink">
            {heading}
          </h2>
          <div className="grid items-end gap-x-6 gap-y-4 sm:grid-cols-2 lg:grid-cols-3">
            {fields.map((field) => (
              <GroupField key={field.name} {...props} field={field} />
            ))}
          </div>
        </section>
      ))}
    </>
  );
}

function GroupField({
  field,
  draft,
  onChange,
  ...props
}: ProfileGroupsProps & { readonly field: ProfileField }): ReactElement {
  if (field.kind === "choice") {
    return (
      <SelectField
        name={field.name}
        label={field.label}
        hint={field.how}
        options={field.options}
        value={draft.choices[field.name]}
        onChange={(event) => onChange({ ...draft, choices: { ...draft.choices, [field.name]: event.target.value } })}
      />
    );
  }
  return (
    <ProfileRow
      {...props}
      name={field.name}
      how={field.how}
      draft={draft}
      onNumber={(name, entry) => onChange({ ...draft, numbers: { ...draft.numbers, [name]: entry } })}
      onFigure={(name, entries) => onChange({ ...draft, figures: { ...draft.figures, [name]: entries } })}
    />
  );
}
