import { useEffect, useMemo, useState, type ReactElement } from "react";
import type { NextReading } from "@/lib/calc/compare";
import { pointsOfStep } from "@/lib/ui/brew/measuring-points";
import { firstCautions, StepCautions } from "@/lib/ui/brew/step-cautions";
import { StepFigures } from "@/lib/ui/brew/step-figures";
import type { MeasuringPoint } from "@/lib/ui/brew/reading-draft";
import { Quantity } from "@/lib/ui/quantity";
import { currentReadings } from "@/lib/model/current-readings";
import { brewReadings } from "@/lib/model/log/brew-readings";
import type * as nextReadingPart from "@/lib/model/next-reading";
import { isOver, type DayStep } from "../plan/day-plan";
import { seriesOfStep } from "../plan/step-series";
import { useDay } from "./day-context";
import type { OnEnter } from "./entry-bar";

/** Address of a part of the script, which `lib/ops/build-day.mjs` puts in. */
declare const NEXT_READING: string;

interface StepBodyProps {
  readonly dayStep: DayStep;
  readonly onEnter: OnEnter;
}

/** How hot, how much, at what power; what to beware of; what to measure. */
export function StepBody({ dayStep, onEnter }: StepBodyProps): ReactElement {
  const { brew, plan, preferences } = useDay();
  const { step } = dayStep;
  const first = useMemo(() => firstCautions(brew.runSheet), [brew.runSheet]);
  const points = [...pointsOfStep(step, plan), ...seriesOfStep(step)];
  const asked = useAskedFor();
  return (
    <div className="flex flex-col gap-3">
      <StepFigures step={step} preferences={preferences} />
      <StepCautions step={step} first={first.get(step.id) ?? new Set()} />
      {points.map((point) => (
        <PointLine
          key={point.quantity}
          point={point}
          stepId={step.id}
          asked={asked?.quantity === point.quantity ? asked.words : null}
          onEnter={onEnter}
        />
      ))}
    </div>
  );
}

/** What to measure here, what to expect, and what was read. */
function PointLine({
  point,
  stepId,
  asked,
  onEnter,
}: {
  readonly point: MeasuringPoint;
  readonly stepId: string;
  /** What this reading would decide, where it would decide most. */
  readonly asked: string | null;
  readonly onEnter: OnEnter;
}): ReactElement {
  const { preferences, mayWrite } = useDay();
  const { label, dimension, expected } = point;
  const read = useLastRead(point.quantity);
  return (
    <div className="flex flex-wrap items-center justify-between gap-x-4 gap-y-2 border-l-4 border-ink pl-3">
      <p>
        <strong>Measure: {label}.</strong>{" "}
        {expected === null ? null : (
          <>
            Expect{" "}
            <Quantity
              value={expected.value}
              interval={expected.interval}
              dimension={dimension}
              preferences={preferences}
            />
            .{" "}
          </>
        )}
        {read === null ? null : (
          <>
            Read: <Quantity value={read} dimension={dimension} preferences={preferences} />.
          </>
        )}
        {asked === null ? null : <span className="block">{asked}</span>}
      </p>
      {mayWrite ? (
        <button
          type="button"
          className="button button-quiet day-button-small"
          onClick={() => onEnter({ kind: "reading", point, step: stepId, target: null })}
        >
          {read === null ? "Enter" : "Enter again"}
          <span className="sr-only"> {label}</span>
        </button>
      ) : null}
    </div>
  );
}

/**
 * The reading that would decide most, said where it is taken and nowhere else; gone once it is read or its step is over.
 * What reckons it comes after the page, which can do without.
 */
function useAskedFor(): NextReading | null {
  const { brew, plan, day, log } = useDay();
  const [asked, setAsked] = useState<NextReading | null>(null);
  useEffect(() => {
    let isOld = false;
    const open = day.steps.filter((each) => !isOver(each)).map(({ step }) => step);
    (import(NEXT_READING) as Promise<typeof nextReadingPart>).then(
      ({ nextReadingOf }) => {
        if (!isOld) setAsked(nextReadingOf(plan, brewReadings(brew.id, log.readings), open));
      },
      () => undefined,
    );
    return () => {
      isOld = true;
    };
  }, [brew.id, plan, day.steps, log.readings]);
  return asked;
}

function useLastRead(quantity: MeasuringPoint["quantity"]): number | null {
  const { brew, log } = useDay();
  const current = [...currentReadings(brewReadings(brew.id, log.readings)).values()];
  const once = current.find((reading) => reading.quantity === quantity);
  if (once !== undefined) return once.value;
  const last = log.readings.findLast(({ measured, isVoid }) => measured.quantity === quantity && !isVoid);
  return last?.measured.value ?? null;
}
