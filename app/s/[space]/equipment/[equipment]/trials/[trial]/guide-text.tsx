import { Caution } from "@/lib/ui/caution";
import type { PartGuide } from "./part-guides";

interface GuideTextProps {
  readonly guide: PartGuide;
  readonly steps: readonly string[];
  /** Whether something was read already: then the text makes room, but the cautions stay. */
  readonly isBegun: boolean;
}

/** What a part tells, what to have ready, what to do, and what to mind. */
export function GuideText({ guide, steps, isBegun }: GuideTextProps) {
  return (
    <>
      <details open={!isBegun}>
        <summary className="target">What to do</summary>
        <p className="mb-2">
          <strong>Tells:</strong> {guide.tells}
        </p>
        <p className="mb-2">
          <strong>Have ready:</strong> {guide.ready}
        </p>
        <ol className="mb-4 list-decimal ps-6">
          {steps.map((step) => (
            <li key={step} className="mb-1">
              {step}
            </li>
          ))}
        </ol>
      </details>
      <div className="my-4 flex flex-col gap-3">
        {guide.cautions.map((caution) => (
          <Caution key={caution}>{caution}</Caution>
        ))}
      </div>
    </>
  );
}
