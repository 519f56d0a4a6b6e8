"use client";

import type { ReactElement } from "react";
import { fieldUnit, readField } from "../read-field";
import { useEditor } from "./editor-context";
import { stepped } from "./what-if";
import type { WhatIfInput } from "./what-if-inputs";

/** One input with its value, to be pressed up and down or typed over. */
export function WhatIfRow(props: {
  readonly input: WhatIfInput;
  readonly text: string;
  readonly onChange: (text: string) => void;
}): ReactElement {
  const { input, text, onChange } = props;
  const { preferences } = useEditor();
  const { field, label } = input;
  const unit = fieldUnit(field, preferences);
  const read = readField({ field, text, label, preferences });
  const press = (by: -1 | 1): void => {
    const next = stepped(input, text, by, preferences);
    if (next !== null) onChange(next);
  };
  return (
    <li className="border-b border-rule py-1">
      <div className="flex flex-wrap items-center justify-end gap-x-2">
        <span className="flex-1 basis-40">{label}</span>
        <span className="flex items-center gap-x-2">
          <button type="button" className="row-button" aria-label={`Less: ${label}`} onClick={() => press(-1)}>
            −
          </button>
          <input
            type="text"
            className="input w-24 text-end"
            aria-label={unit === "" ? label : `${label}, ${unit}`}
            autoComplete="off"
            maxLength={40}
            value={text}
            onChange={(event) => onChange(event.target.value)}
          />
          <span className="quantity-unit min-w-8">{unit}</span>
          <button type="button" className="row-button" aria-label={`More: ${label}`} onClick={() => press(1)}>
            +
          </button>
        </span>
      </div>
      {read.ok ? null : <p className="field-error text-sm">{read.message}</p>}
    </li>
  );
}
