"use client";

import type { Preferences } from "@/lib/model/preferences";
import type { TrialPart } from "@/lib/model/trial/trial-entry";
import type { TrialRun } from "@/lib/model/trial/trial-log";
import { conditionsEntry, readingEntry, valuesOf } from "./entry-of";
import { conditionFields, type FormField, type FormValues } from "./form-shape";
import { madeNow } from "./make-entry";
import { MeasureForm } from "./measure-form";
import { PART_GUIDES } from "./part-guides";

interface PartFormsProps {
  readonly part: TrialPart;
  readonly run: number;
  /** What was stated and read in this run; null where nothing was. */
  readonly here: TrialRun | null;
  readonly ofPart: readonly TrialRun[];
  readonly fields: readonly FormField[];
  readonly unit: "mm" | "mark";
  readonly isCounterflow: boolean;
  readonly preferences: Preferences;
  readonly onAdd: (made: object) => void;
}

/** What is stated once for a run, and what is read again and again. */
export function PartForms(props: PartFormsProps) {
  const { part, run, here, ofPart, fields, unit, isCounterflow, preferences, onAdd } = props;
  const guide = PART_GUIDES[part];
  const conditions = conditionFields(part, isCounterflow);
  const stated = here?.conditions?.entry ?? null;
  // Marks and dead space have a usual answer; the others cannot be computed before they are told.
  const mayRead = conditions.length === 0 || stated !== null || part === "marks" || part === "dead space";
  const statement =
    conditions.length === 0 ? null : (
      <MeasureForm
        key={`conditions ${part} ${String(run)} ${stated?.id ?? ""}`}
        legend={stated === null ? `First, for run ${String(run)}` : `As stated for run ${String(run)}`}
        name="conditions"
        fields={conditions}
        values={stated === null ? lastStated(ofPart) : valuesOf(stated)}
        preferences={preferences}
        button={stated === null ? "Save this" : "Save the change"}
        isKept
        onSave={(values, at) => onAdd(conditionsEntry(part, madeNow(run, at, stated?.id ?? null), values))}
      />
    );
  return (
    <div className="flex flex-col gap-6">
      {stated === null ? statement : null}
      {mayRead ? (
        <MeasureForm
          key={`reading ${part} ${String(run)} ${unit}`}
          legend={guide.reading}
          name="reading"
          fields={fields}
          values={{}}
          preferences={preferences}
          button={guide.save}
          at={null}
          isKept={false}
          onSave={(values, at) => onAdd(readingEntry(part, madeNow(run, at, null), values, isCounterflow))}
        />
      ) : null}
      {stated === null ? null : (
        <details>
          <summary className="target">As stated for run {run}</summary>
          {statement}
        </details>
      )}
    </div>
  );
}

/** What was stated for the run before is mostly so again. */
function lastStated(runs: readonly TrialRun[]): FormValues {
  const last = runs.findLast(({ conditions }) => conditions !== null)?.conditions?.entry;
  return last === undefined ? {} : valuesOf(last);
}
