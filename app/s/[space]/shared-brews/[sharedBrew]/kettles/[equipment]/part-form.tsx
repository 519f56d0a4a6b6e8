"use client";

import type { ActionResult } from "@/lib/model/action-result";
import type { DayWindow } from "@/lib/model/plain-day";
import type { Participant } from "@/lib/model/shared-brew";
import type { SharedBrewRules } from "@/lib/model/shared-brew-rules";
import { ActionForm } from "@/lib/ui/action-form";
import { Notice } from "@/lib/ui/notice";
import { SubmitButton } from "@/lib/ui/submit-button";
import { PartFields } from "./part-fields";

interface PartFormProps {
  readonly ids: { readonly sharedBrewId: string; readonly equipmentId: string };
  readonly planVersion: number;
  readonly window: DayWindow | null;
  readonly rules: SharedBrewRules;
  /** null joins. */
  readonly participant: Participant | null;
  readonly joinWords: string;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

const NOTHING = { brewAt: null, zone: null, water: null, yeast: "" };

/** Joins with a kettle, or changes the day, water and yeast of a member who has. */
export function PartForm({ ids, planVersion, window, rules, participant, joinWords, action }: PartFormProps) {
  return (
    <ActionForm action={action}>
      {({ errors, result, isPending }) => (
        <>
          <input type="hidden" name="sharedBrewId" value={ids.sharedBrewId} />
          <input type="hidden" name="equipmentId" value={ids.equipmentId} />
          {participant === null ? (
            <input type="hidden" name="planVersion" value={planVersion} />
          ) : (
            <input type="hidden" name="lockVersion" value={participant.lockVersion} />
          )}
          <PartFields part={participant ?? NOTHING} window={window} rules={rules} errors={errors} />
          {result?.status === "ok" && !isPending ? <Notice live>Saved.</Notice> : null}
          <div>
            <SubmitButton pending="Saving…" isPending={isPending}>
              {participant === null ? joinWords : "Save day, water and yeast"}
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
