import type { NextReading } from "@/lib/calc/compare";
import type { CautionId, Step } from "@/lib/calc/runsheet";
import type { Brew } from "@/lib/model/brew";
import type { Preferences } from "@/lib/model/preferences";
import { pointsOfStep } from "@/lib/ui/brew/measuring-points";
import type { BrewPlan } from "@/lib/model/brew-plan";
import { MeasuringPointView } from "./measuring-point-view";
import { StepCautions } from "@/lib/ui/brew/step-cautions";
import { StepFigures } from "@/lib/ui/brew/step-figures";
import { StepTime } from "./step-time";
import { stepTitle } from "@/lib/ui/brew/step-titles";
import type { RecordReading } from "./use-delivery";

interface StepItemProps {
  readonly home: string;
  readonly brew: Brew;
  readonly plan: BrewPlan | null;
  readonly step: Step;
  readonly firstCautions: ReadonlySet<CautionId>;
  readonly preferences: Preferences;
  /** The reading more that would decide most. */
  readonly next: NextReading | null;
  readonly record: RecordReading;
}

/** One step of the day: when, what, how much, what to beware of, what to measure. */
export function StepItem({ plan, step, firstCautions, next, ...shared }: StepItemProps) {
  const { brew, preferences } = shared;
  return (
    <li
      id={step.id}
      className="grid max-w-none break-inside-avoid gap-x-4 gap-y-1 border-b border-rule py-4 sm:grid-cols-[5.5rem_minmax(0,1fr)]"
    >
      <StepTime step={step} startedAt={brew.startedAt} />
      <div className="flex flex-col gap-2">
        <h3>{stepTitle(step, brew.equipment)}</h3>
        <StepFigures step={step} preferences={preferences} />
        <StepCautions step={step} first={firstCautions} />
        {pointsOfStep(step, plan).map((point) => (
          <MeasuringPointView
            key={point.quantity}
            {...shared}
            point={point}
            at={step.id}
            asked={next?.quantity === point.quantity ? next.words : null}
          />
        ))}
      </div>
    </li>
  );
}
