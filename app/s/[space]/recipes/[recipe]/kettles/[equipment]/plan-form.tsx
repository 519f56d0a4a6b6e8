"use client";

import { ActionForm } from "@/lib/ui/action-form";
import type { VolumeView } from "@/lib/ui/kettles/kettle-view";
import { SubmitButton } from "@/lib/ui/submit-button";
import { planBrewAction } from "./actions";

export interface PlanFormProps {
  readonly space: string;
  readonly recipeId: string;
  readonly equipmentId: string;
  readonly rev: number;
  readonly volume: VolumeView;
}

/** The button that makes a brew of what the sheet shows. */
export function PlanForm(
  props: PlanFormProps & { readonly way: string; readonly words: string; readonly about: string },
) {
  const { way, words, about, ...request } = props;
  const hidden = { ...request, way };
  return (
    <ActionForm action={planBrewAction}>
      {({ isPending }) => (
        <div className="no-print">
          {Object.entries(hidden).map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
          <SubmitButton pending="Planning…" isPending={isPending} kind={way === "" ? "plain" : "quiet"}>
            {words}
            <span className="sr-only">: {about}</span>
          </SubmitButton>
        </div>
      )}
    </ActionForm>
  );
}
