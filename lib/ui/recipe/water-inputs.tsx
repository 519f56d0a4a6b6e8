"use client";

import type { ReactElement } from "react";
import { IONS, SALTS } from "@/lib/calc/water";
import { ION_FIELDS, SALT_FIELDS } from "@/lib/model/recipe-fields";
import { ionName, saltName } from "./draft";
import { DraftNumber } from "./draft-number";
import { useEditor } from "./editor-context";
import { FieldGrid } from "./field-grid";
import type { StationInputsProps } from "./station-inputs-props";

/** What the water is before anything is added, and the salts that go in. */
export function WaterInputs({ draft, problems }: StationInputsProps): ReactElement {
  const { isReadOnly } = useEditor();
  const salts = isReadOnly ? SALTS.filter((salt) => draft.fields[saltName(salt)].text !== "") : SALTS;
  return (
    <div className="flex flex-col gap-4">
      <fieldset>
        <legend className="mb-2 font-semibold">Source water</legend>
        <FieldGrid>
          {IONS.map((ion) => (
            <DraftNumber key={ion} {...{ draft, problems }} name={ionName(ion)} label={ION_FIELDS[ion].label} />
          ))}
        </FieldGrid>
      </fieldset>
      {salts.length === 0 ? null : (
        <fieldset>
          <legend className="mb-2 font-semibold">Salts, in all the hot water together</legend>
          <FieldGrid>
            {salts.map((salt) => (
              <DraftNumber key={salt} {...{ draft, problems }} name={saltName(salt)} label={SALT_FIELDS[salt].label} />
            ))}
          </FieldGrid>
        </fieldset>
      )}
    </div>
  );
}
