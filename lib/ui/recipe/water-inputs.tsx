"use client";

import type { ReactElement } from "react";
import { IONS, SALTS } from "@/lib/calc/water";
import { ION_FIELDS, SALT_FIELDS } from "@/lib/model/recipe-fields";
import { ACID_LABELS, ACID_NAMES } from "./acid-names";
import { ionName, saltName } from "./draft";
import { DraftNumber } from "./draft-number";
import { DraftSelect } from "./draft-select";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { FieldGrid } from "./field-grid";
import { useEditorValue } from "./use-editor-value";

const ACID_CHOICES = [
  { value: "", text: "None" },
  ...ACID_NAMES.map((name) => ({ value: name, text: ACID_LABELS[name] })),
];

/** What the water is before anything is added, and the salts and the acid that go in. */
export function WaterInputs(): ReactElement {
  const { isReadOnly } = useEditor();
  const acid = useEditorValue(({ draft }) => draft.fields["water.acid"].text);
  const used = useEditorValue(usedSalts);
  const salts = isReadOnly ? SALTS.filter((salt) => used.split(" ").includes(salt)) : SALTS;
  return (
    <div className="flex flex-col gap-4">
      <fieldset>
        <legend className="mb-2 font-semibold">Source water</legend>
        <FieldGrid>
          {IONS.map((ion) => (
            <DraftNumber key={ion} name={ionName(ion)} label={ION_FIELDS[ion].label} />
          ))}
        </FieldGrid>
      </fieldset>
      {salts.length === 0 ? null : (
        <fieldset>
          <legend className="mb-2 font-semibold">Salts, in all the hot water together</legend>
          <FieldGrid>
            {salts.map((salt) => (
              <DraftNumber key={salt} name={saltName(salt)} label={SALT_FIELDS[salt].label} />
            ))}
          </FieldGrid>
        </fieldset>
      )}
      {isReadOnly && acid === "" ? null : (
        <fieldset>
          <legend className="mb-2 font-semibold">Acid, in the mash water</legend>
          <FieldGrid>
            <DraftSelect name="water.acid" label="Acid" options={ACID_CHOICES} />
            {acid === "" ? null : <DraftNumber name="water.acidMl" label="Millilitres" />}
          </FieldGrid>
          {acid === "" ? null : (
            <p className="mt-2 text-sm">
              Concentrated acid burns skin and eyes: goggles and gloves, food grade only, and always the acid into the
              water. Follow the maker's sheet and local codes.
            </p>
          )}
        </fieldset>
      )}
    </div>
  );
}

function usedSalts({ draft }: EditorState): string {
  return SALTS.filter((salt) => draft.fields[saltName(salt)].text !== "").join(" ");
}
