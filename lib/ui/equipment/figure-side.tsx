import type { ReactElement } from "react";
import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { intervalOfSd } from "../brew/interval-of-sd";
import { Quantity } from "../quantity";

export interface FigureSideProps {
  readonly label: string;
  readonly figure: { readonly value: number; readonly sd: number | null } | null;
  /** What is said where there is no figure. */
  readonly none: string;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
}

/** One figure of a kettle beside others of the same: term and value of a description list. */
export function FigureSide({ label, figure, none, dimension, preferences }: FigureSideProps): ReactElement {
  return (
    <div>
      <dt className="text-sm text-muted">{label}</dt>
      <dd>
        {figure === null ? (
          none
        ) : (
          <Quantity
            value={figure.value}
            dimension={dimension}
            interval={intervalOfSd(figure.value, figure.sd)}
            // A jug tells more of a litre than a recipe does.
            digits={dimension === "volume" ? 2 : undefined}
            preferences={preferences}
          />
        )}
      </dd>
    </div>
  );
}
