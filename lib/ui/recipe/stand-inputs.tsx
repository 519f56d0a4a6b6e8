"use client";

import type { ReactElement } from "react";
import { DraftNumber } from "./draft-number";
import { DraftSelect } from "./draft-select";
import { FieldGrid } from "./field-grid";
import { IngredientRows } from "./row-list";
import { useEditorValue } from "./use-editor-value";

const STAND = [
  { value: "no", text: "No, chilled at once" },
  { value: "yes", text: "Yes" },
] as const;

/** The rest of the hopped wort below boiling. */
export function StandInputs(): ReactElement {
  const hasStand = useEditorValue(({ draft }) => draft.fields.stand.text === "yes");
  const hasHops = useEditorValue(({ draft }) => draft.rows.standHops.length > 0);
  return (
    <div className="flex flex-col gap-5">
      <FieldGrid>
        <DraftSelect name="stand" label="Hop stand" options={STAND} />
        {hasStand ? <DraftNumber name="stand.celsius" /> : null}
        {hasStand ? <DraftNumber name="stand.minutes" /> : null}
      </FieldGrid>
      {hasStand || hasHops ? <IngredientRows list="standHops" /> : null}
    </div>
  );
}
