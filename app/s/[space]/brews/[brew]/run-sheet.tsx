import { nextReadingOf } from "@/lib/model/next-reading";
import type { MeasuringPoint } from "@/lib/ui/brew/reading-draft";
import type { Brew } from "@/lib/model/brew";
import type { Preferences } from "@/lib/model/preferences";
import { pointsOutsideSteps } from "@/lib/ui/brew/measuring-points";
import type { BrewPlan } from "@/lib/model/brew-plan";
import { MeasuringPointView } from "./measuring-point-view";
import { firstCautions } from "@/lib/ui/brew/step-cautions";
import { StepItem } from "./step-item";
import type { RecordReading } from "./use-delivery";

interface RunSheetProps {
  readonly home: string;
  readonly brew: Brew;
  readonly plan: BrewPlan | null;
  readonly preferences: Preferences;
  readonly record: RecordReading;
}

/** The ledger turned along time, and what is measured when the day is over. */
export function RunSheet(props: RunSheetProps) {
  const { brew, plan } = props;
  const first = firstCautions(brew.runSheet);
  const later = pointsOutsideSteps(brew.runSheet, plan);
  const next = brew.state === "closed" ? null : nextReadingOf(plan, brew.readings, stillOpen(brew, later));
  return (
    <>
      <section aria-labelledby="run-sheet">
        <h2 id="run-sheet">Run sheet</h2>
        <p className="text-muted">
          {brew.startedAt === null
            ? "Times count from starting to weigh out. Starting the brew day puts clock times beside them."
            : "Clock times count from the start of the brew day."}
        </p>
        <ol className="mt-3 border-t border-ink">
          {brew.runSheet.map((step) => (
            <StepItem
              key={step.id}
              {...props}
              step={step}
              next={next}
              firstCautions={first.get(step.id) ?? new Set()}
            />
          ))}
        </ol>
      </section>
      {later.length === 0 ? null : (
        <section aria-labelledby="later" className="mt-8">
          <h2 id="later">After the brew day</h2>
          {later.map((point) => (
            <MeasuringPointView
              key={point.quantity}
              {...props}
              point={point}
              at="later"
              asked={next?.quantity === point.quantity ? next.words : null}
            />
          ))}
        </section>
      )}
    </>
  );
}

/** Where something can still be measured: at steps that are not over, and after the brew day. */
function stillOpen(
  { runSheet, log, state }: Brew,
  later: readonly MeasuringPoint[],
): readonly { readonly measure: readonly string[] }[] {
  const isOnTheKettle = state === "planned" || state === "on the kettle";
  const open = isOnTheKettle ? runSheet.filter(({ id }) => (log.steps.get(id)?.doneAt ?? null) === null) : [];
  return [...open, { measure: later.map(({ quantity }) => quantity) }];
}
