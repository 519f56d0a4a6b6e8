import type { ReactElement } from "react";
import type { Equipment } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { Quantity } from "../quantity";
import { derivedFigures } from "./derived-figures";

/** What the kettle does with its figures; it follows the form while somebody writes. */
export function DerivedTable(props: {
  readonly equipment: Equipment;
  readonly isOld: boolean;
  readonly preferences: Preferences;
}): ReactElement {
  const { equipment, isOld, preferences } = props;
  return (
    <section aria-labelledby="derived" className="border-y border-ink py-4">
      <h2 id="derived" className="mb-2">
        What it does on a usual day
      </h2>
      <dl className="grid gap-x-8 gap-y-3 sm:grid-cols-2 lg:grid-cols-3">
        {derivedFigures(equipment, preferences).map(({ label, value, dimension, how }) => (
          <div key={label}>
            <dt className="text-sm text-muted">{label}</dt>
            <dd>
              <output aria-live="off" aria-label={label} className="text-lg">
                <Quantity value={value} dimension={dimension} preferences={preferences} attention={value === null} />
              </output>
              <span className="block text-sm text-muted">{how}</span>
            </dd>
          </div>
        ))}
      </dl>
      <p className="min-h-6 text-sm text-accent">{isOld ? "Last numbers, waiting for the fields below." : ""}</p>
    </section>
  );
}
