import type { ReactElement } from "react";
import { QUANTITIES, type Intervals, type Ledger } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { Quantity } from "../quantity";
import { sheetFigures } from "./sheet-figures";

/** The numbers on top of a printed sheet, with the intervals of those that are predicted. */
export function FigureList(props: {
  readonly ledger: Ledger;
  readonly intervals: Intervals;
  readonly preferences: Preferences;
}): ReactElement {
  const { ledger, intervals, preferences } = props;
  return (
    <dl className="sheet-figures">
      {sheetFigures(preferences).map(({ id, label }) => (
        <div key={id}>
          <dt>{label}</dt>
          <dd>
            <Quantity
              value={ledger.quantities[id]}
              dimension={QUANTITIES[id].dimension}
              interval={intervals[id]}
              preferences={preferences}
            />
          </dd>
        </div>
      ))}
    </dl>
  );
}
