"use client";

import { useMemo, useState, type ReactElement, type SubmitEvent } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { Equipment } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { SaveOutcome } from "@/lib/model/save-outcome";
import { ErrorSummary } from "../error-summary";
import { SubmitButton } from "../submit-button";
import { TextField } from "../text-field";
import { DerivedTable } from "./derived-table";
import { draftOfEquipment } from "./equipment-draft";
import { ProfileGroups } from "./profile-groups";
import { readEquipment } from "./read-equipment";
import { ProfileSaveState } from "./profile-save-state";
import { useProfileSave } from "./use-profile-save";

/** The form of an equipment profile. What it does with its figures is computed on each keystroke. */
export interface ProfileFormProps {
  readonly equipment: Equipment;
  readonly rev: number;
  readonly preferences: Preferences;
  readonly send: (change: {
    readonly baseRev: number;
    readonly equipment: Equipment;
  }) => Promise<ActionResult<SaveOutcome>>;
}

export function ProfileForm({ equipment, rev, preferences, send }: ProfileFormProps): ReactElement {
  const [draft, setDraft] = useState(() => draftOfEquipment(equipment, preferences));
  const [lastGood, setLastGood] = useState(equipment);
  const reading = useMemo(() => readEquipment(draft, preferences), [draft, preferences]);
  if (reading.equipment !== null && reading.equipment !== lastGood) setLastGood(reading.equipment);
  const saving = useProfileSave({ rev, send });

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    saving.save(reading);
  }

  return (
    <form onSubmit={submit} noValidate className="flex flex-col gap-6">
      {saving.state.status === "wrong" ? <ErrorSummary errors={saving.state.errors} /> : null}
      <DerivedTable equipment={lastGood} isOld={reading.equipment === null} preferences={preferences} />
      <div className="max-w-xl">
        <TextField
          name="name"
          label="Name of the equipment"
          maxLength={80}
          value={draft.name}
          error={reading.problems.name}
          onChange={(event) => setDraft({ ...draft, name: event.target.value })}
        />
      </div>
      <ProfileGroups draft={draft} problems={reading.problems} preferences={preferences} onChange={setDraft} />
      <div className="flex flex-wrap items-center gap-4 border-t border-ink pt-6">
        <SubmitButton pending="Saving…" isPending={saving.isPending}>
          Save as revision {saving.baseRev + 1}
        </SubmitButton>
        <ProfileSaveState state={saving.state} />
      </div>
    </form>
  );
}
