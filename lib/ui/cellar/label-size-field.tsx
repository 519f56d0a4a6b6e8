import type { ReactElement } from "react";
import { LABEL_SIZES, type LabelSize } from "@/lib/model/cellar/label";
import { SelectField } from "../select-field";

interface LabelSizeFieldProps {
  readonly value: LabelSize["id"];
  readonly onChange: (size: LabelSize["id"]) => void;
}

/** How large the labels are. */
export function LabelSizeField({ value, onChange }: LabelSizeFieldProps): ReactElement {
  return (
    <SelectField
      name="label-size"
      label="Size"
      value={value}
      onChange={(event) => onChange(LABEL_SIZES.find(({ id }) => id === event.target.value)?.id ?? "roll")}
      options={LABEL_SIZES.map(({ id, text }) => ({ value: id, text }))}
    />
  );
}
