"use client";

import type { LabelSize } from "@/lib/model/cellar/label";
import { LabelSizeField } from "@/lib/ui/cellar/label-size-field";
import { NumberField } from "@/lib/ui/number-field";

export const MOST_BOTTLES = 48;

interface LabelChoicesProps {
  readonly size: LabelSize["id"];
  readonly setSize: (size: LabelSize["id"]) => void;
  readonly count: string;
  readonly setCount: (count: string) => void;
  /** Whether what was typed is a number of bottles. */
  readonly isCount: boolean;
}

/** How large the labels are, and how many each entry gets. */
export function LabelChoices({ size, setSize, count, setCount, isCount }: LabelChoicesProps) {
  return (
    <div className="grid gap-4 sm:grid-cols-2">
      <LabelSizeField value={size} onChange={setSize} />
      <NumberField
        name="label-count"
        label="Bottles of each entry"
        unit=""
        value={count}
        onChange={(event) => setCount(event.target.value)}
        error={isCount ? undefined : `Bottles “${count}” is not a whole number from 1 to ${String(MOST_BOTTLES)}`}
      />
    </div>
  );
}
