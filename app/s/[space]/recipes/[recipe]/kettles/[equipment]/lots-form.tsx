"use client";

import type { ActionResult } from "@/lib/model/action-result";
import type { AdaptationOutcome } from "@/lib/server/adaptations/writes";
import { ActionForm } from "@/lib/ui/action-form";
import { Notice } from "@/lib/ui/notice";
import { SelectField } from "@/lib/ui/select-field";
import { SubmitButton } from "@/lib/ui/submit-button";
import { LOT_FIELD } from "./lot-field";

interface Choice {
  readonly value: string;
  readonly text: string;
}

export interface LotRow {
  readonly path: string;
  readonly label: string;
  readonly chosen: string;
  readonly choices: readonly Choice[];
}

interface LotsFormProps {
  readonly rows: readonly LotRow[];
  /** Recipe, kettle and what is chosen besides lots, as it was read. */
  readonly kept: Readonly<Record<string, string | number>>;
  readonly action: (
    previous: ActionResult<AdaptationOutcome> | null,
    form: FormData,
  ) => Promise<ActionResult<AdaptationOutcome>>;
}

/** Which lot each row is taken from. */
export function LotsForm({ rows, kept, action }: LotsFormProps) {
  return (
    <ActionForm action={action}>
      {({ result, isPending }) => (
        <>
          {Object.entries(kept).map(([name, value]) => (
            <input key={name} type="hidden" name={name} value={value} />
          ))}
          <div className="grid items-end gap-x-6 gap-y-3 sm:grid-cols-2 lg:grid-cols-3">
            {rows.map(({ path, label, chosen, choices }) => (
              <SelectField
                key={path}
                name={LOT_FIELD + path}
                label={label}
                defaultValue={chosen}
                options={[{ value: "", text: "By the recipe’s own figures" }, ...choices]}
              />
            ))}
          </div>
          {result?.status === "ok" && !result.data.ok ? (
            <Notice kind="attention" live>
              Somebody else chose for this kettle after you opened the sheet, so nothing of yours was kept.{" "}
              <a href="">Look at it as it is now</a>.
            </Notice>
          ) : null}
          <div>
            <SubmitButton pending="Solving…" isPending={isPending}>
              Solve with these lots
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
