import type { ReactElement } from "react";

/** A field of a recipe that is only read. */
export function StaticValue(props: {
  readonly label: string;
  readonly text: string;
  readonly unit: string;
}): ReactElement {
  const { label, text, unit } = props;
  return (
    <div className="field">
      <span className="text-sm text-muted">{label}</span>
      <span>
        {text.trim() === "" ? "—" : text}
        {text.trim() === "" || unit === "" ? null : <span className="quantity-unit">{unit}</span>}
      </span>
    </div>
  );
}
