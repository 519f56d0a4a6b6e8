"use client";

import type { AdditionMade } from "@/lib/model/log/log-event";
import { useHydrated } from "@/lib/ui/use-hydrated";
import { EntryLine } from "../entry-line";
import type { RecordReading } from "../use-delivery";
import { useLogEntry } from "../use-log-entry";
import { OtherAddition } from "./other-addition";

interface AdditionFormProps {
  readonly brewId: string;
  /** Of the recipe, not added yet. */
  readonly dryHops: readonly { readonly name: string; readonly grams: number }[];
  readonly record: RecordReading;
}

/** Logs what goes into the fermenter: the recipe's dry hops with one press, anything else by name. */
export function AdditionForm({ brewId, dryHops, record }: AdditionFormProps) {
  const { delivery, send } = useLogEntry(brewId, record);
  const isHydrated = useHydrated();

  function log(said: Pick<AdditionMade, "name" | "amount" | "unit">, at: Date | null): Promise<boolean> {
    return send([{ content: { kind: "addition", ...said, at: "fermenter", note: "" }, at }]);
  }

  return (
    <div className="no-print mt-3 flex flex-col gap-3">
      {dryHops.map(({ name, grams }) => (
        <div key={name}>
          <button
            type="button"
            className="button"
            disabled={!isHydrated}
            onClick={() => void log({ name, amount: grams, unit: "g" }, null)}
          >
            {name}, {grams} g: added now
          </button>
        </div>
      ))}
      <EntryLine delivery={delivery} />
      <details>
        <summary className="target">Log something else</summary>
        <OtherAddition log={log} isSaving={delivery.kind === "saving"} />
      </details>
    </div>
  );
}
