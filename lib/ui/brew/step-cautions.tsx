import type { ReactElement } from "react";
import { CAUTIONS, type CautionId, type Step } from "@/lib/calc/runsheet";
import { Caution } from "../caution";

/** The cautions of a step: in full where the sheet says them first, by name afterwards. */
export function StepCautions({
  step,
  first,
}: {
  readonly step: Step;
  readonly first: ReadonlySet<CautionId>;
}): ReactElement {
  const again = step.cautions.filter((id) => !first.has(id));
  return (
    <>
      {step.cautions
        .filter((id) => first.has(id))
        .map((id) => (
          <Caution key={id}>{CAUTIONS[id]}</Caution>
        ))}
      {again.length === 0 ? null : <Caution>{capital(again.join(", "))}, as said above.</Caution>}
    </>
  );
}

/** The cautions that each step is the first to give. */
export function firstCautions(steps: readonly Step[]): ReadonlyMap<string, ReadonlySet<CautionId>> {
  const said = new Set<CautionId>();
  return new Map(
    steps.map((step) => {
      const first = new Set(step.cautions.filter((id) => !said.has(id)));
      for (const id of first) said.add(id);
      return [step.id, first];
    }),
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
