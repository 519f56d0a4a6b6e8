"use client";

import type { OverRated } from "@/lib/model/cellar/package-pressure";
import { formatQuantity } from "@/lib/ui/format-quantity";
import { TextField } from "@/lib/ui/text-field";
import type { PackageFieldsProps } from "./package-fields";

interface OverrideFieldsProps extends PackageFieldsProps {
  readonly over: readonly OverRated[];
  /** Either of them signs. */
  readonly names: readonly [me: string, title: string];
}

/** The refusal to fill a container over what it is made for, and the way past it: a name and a reason, which the log keeps. */
export function OverrideFields({ draft, preferences, type, over, names }: OverrideFieldsProps) {
  const bar = (value: number): string => {
    const { text, unit } = formatQuantity({ value, dimension: "pressure", preferences });
    return `${text} ${unit}`;
  };
  return (
    <div className="notice notice-attention flex flex-col gap-3" role="group" aria-label="Over the rating">
      {over.map(({ name, gaugeBar, ratedBar, rated }, i) => (
        <p key={i} className="font-semibold">
          Refused: {name} would hold {bar(gaugeBar)},{" "}
          {ratedBar === null
            ? `and the recipe states ${String(rated)} volumes of CO₂ at most for its containers.`
            : `and its maker states ${bar(ratedBar)} at most.`}
        </p>
      ))}
      <p>
        Containers burst above what they are made for. Use less carbonation, a cooler place or stronger containers. Who
        goes over it all the same signs with a name and says why; the log keeps both.
      </p>
      <TextField
        name="package-name"
        label={`Type “${names[0]}” or “${names[1]}” to go over it`}
        autoComplete="off"
        maxLength={120}
        value={draft.name}
        onChange={(event) => type({ name: event.target.value })}
      />
      <TextField
        name="package-why"
        label="Reason for going over it"
        autoComplete="off"
        maxLength={500}
        value={draft.why}
        onChange={(event) => type({ why: event.target.value })}
      />
    </div>
  );
}
