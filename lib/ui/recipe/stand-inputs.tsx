"use client";

import type { ReactElement } from "react";
import { DraftNumber } from "./draft-number";
import { DraftSelect } from "./draft-select";
import { FieldGrid } from "./field-grid";
import { IngredientRows } from "./row-list";
import type { StationInputsProps } from "./station-inputs-props";

const STAND = [
  { value: "no", text: "No, chilled at once" },
  { value: "yes", text: "Yes" },
] as const;

/** The rest of the hopped wort below boiling. */
export function StandInputs(props: StationInputsProps): ReactElement {
  const { draft, problems } = props;
  const hasStand = draft.fields.stand.text === "yes";
  const hasHops = draft.rows.standHops.length > 0;
  return (
    <div className="flex flex-col gap-5">
      <FieldGrid>
        <DraftSelect draft={draft} name="stand" label="Hop stand" options={STAND} />
        {hasStand ? <DraftNumber {...{ draft, problems }} name="stand.celsius" /> : null}
        {hasStand ? <DraftNumber {...{ draft, problems }} name="stand.minutes" /> : null}
      </FieldGrid>
      {hasStand || hasHops ? <IngredientRows list="standHops" {...props} /> : null}
    </div>
  );
}
