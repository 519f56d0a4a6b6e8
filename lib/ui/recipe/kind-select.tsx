"use client";

import type { ReactElement } from "react";
import type { FermentableKind } from "@/lib/calc/ledger";
import type { RowList } from "./draft";

const IN_THE_MASH: readonly FermentableKind[] = ["malt", "adjunct", "sugar", "malt extract"];
const IN_THE_KETTLE: readonly FermentableKind[] = ["sugar", "malt extract", "adjunct"];

/** What kind of fermentable a row is. */
export function KindSelect(props: {
  readonly list: RowList;
  readonly id: string;
  readonly label: string;
  readonly kind: string;
  readonly onChange: (kind: string) => void;
}): ReactElement {
  const { list, id, label, kind, onChange } = props;
  const kinds = list === "mashGrist" ? IN_THE_MASH : IN_THE_KETTLE;
  return (
    <select
      id={id}
      className="input"
      aria-label={label}
      value={kind}
      onChange={(event) => onChange(event.target.value)}
    >
      {kinds.map((choice) => (
        <option key={choice}>{choice}</option>
      ))}
    </select>
  );
}
