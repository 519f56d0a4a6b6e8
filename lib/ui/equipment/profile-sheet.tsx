import type { ReactElement } from "react";
import type { Equipment } from "@/lib/calc/ledger";
import { EQUIPMENT_FIELDS, type EquipmentField } from "@/lib/model/equipment-fields";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable } from "../data-table";
import { fieldUnit } from "../read-field";
import { DerivedTable } from "./derived-table";
import { draftOfEquipment, isFigure, type EquipmentDraft } from "./equipment-draft";
import { PROFILE_GROUPS, type ProfileField } from "./figure-groups";

/** An equipment profile that is only read: every figure, how well it is known, where from, and how it is measured. */
export function ProfileSheet(props: {
  readonly equipment: Equipment;
  readonly preferences: Preferences;
}): ReactElement {
  const { equipment, preferences } = props;
  const draft = draftOfEquipment(equipment, preferences);
  return (
    <>
      <DerivedTable equipment={equipment} isOld={false} preferences={preferences} />
      {PROFILE_GROUPS.map(({ id, heading, fields }) => (
        <section key={id} className="mt-6">
          <DataTable<ProfileField>
            caption={heading}
            columns={[
              { id: "label", label: "Figure", cell: (field) => labelOf(field) },
              { id: "value", label: "Value", isNumber: true, cell: (field) => valueOf(field, draft, preferences) },
              { id: "from", label: "From", cell: (field) => originOf(field, draft) },
              {
                id: "how",
                label: "How it is measured",
                cell: ({ how }) => <span className="text-sm text-muted">{how}</span>,
              },
            ]}
            records={fields}
            keyOf={({ name }) => name}
          />
        </section>
      ))}
    </>
  );
}

function labelOf(field: ProfileField): string {
  return field.kind === "choice" ? field.label : EQUIPMENT_FIELDS[field.name].label;
}

function valueOf(field: ProfileField, draft: EquipmentDraft, preferences: Preferences): string {
  if (field.kind === "choice") {
    const chosen = draft.choices[field.name];
    return field.options.find(({ value }) => value === chosen)?.text ?? chosen;
  }
  const unit = fieldUnit(EQUIPMENT_FIELDS[field.name], preferences);
  const { value, sd } = textsOf(field.name, draft);
  if (value === "") return "—";
  return sd === null ? `${value} ${unit}` : `${value} ± ${sd} ${unit}`;
}

function textsOf(
  name: EquipmentField,
  { numbers, figures }: EquipmentDraft,
): { readonly value: string; readonly sd: string | null } {
  if (!isFigure(name)) return { value: numbers[name].text, sd: null };
  return { value: figures[name].value.text, sd: figures[name].sd.text };
}

function originOf(field: ProfileField, { figures }: EquipmentDraft): string {
  if (field.kind === "choice" || !isFigure(field.name)) return "";
  const { from, count, basis } = figures[field.name];
  if (basis !== undefined) return `${from}, ${basis}`;
  return count.text === "0" ? from : `${from}, ${count.text} brews`;
}
