"use client";

import { MOST_LABELS, type LabelSize } from "@/lib/model/cellar/label";
import { LabelSizeField } from "@/lib/ui/cellar/label-size-field";
import { NumberField } from "@/lib/ui/number-field";
import { TextField } from "@/lib/ui/text-field";

/** What is chosen for the labels. */
export interface LabelDraft {
  readonly size: LabelSize["id"];
  readonly count: string;
  readonly beer: string;
  readonly allergens: string;
}

interface LabelFieldsProps {
  readonly draft: LabelDraft;
  readonly type: (change: Partial<LabelDraft>) => void;
}

/** How many are printed; null where that is no such number. */
export function labelCount({ count }: Pick<LabelDraft, "count">): number | null {
  const many = /^\d{1,4}$/.test(count.trim()) ? Number(count) : 0;
  return many >= 1 && many <= MOST_LABELS ? many : null;
}

export function LabelFields({ draft, type }: LabelFieldsProps) {
  const { size, count, beer, allergens } = draft;
  const range = `1 to ${String(MOST_LABELS)}`;
  return (
    <>
      <div className="grid gap-4 sm:grid-cols-2">
        <LabelSizeField value={size} onChange={(chosen) => type({ size: chosen })} />
        <NumberField
          name="label-count"
          label="How many"
          unit=""
          value={count}
          onChange={(event) => type({ count: event.target.value })}
          error={labelCount(draft) === null ? `How many “${count}” is not a whole number from ${range}` : undefined}
        />
      </div>
      <TextField
        name="label-beer"
        label="Name of the beer"
        maxLength={60}
        value={beer}
        onChange={(event) => type({ beer: event.target.value })}
      />
      <TextField
        name="label-allergens"
        label="Allergens"
        hint="Proposed from the names of the malts. Read it, and add what else went in: fruit, nuts, finings, honey."
        maxLength={160}
        value={allergens}
        onChange={(event) => type({ allergens: event.target.value })}
      />
    </>
  );
}
