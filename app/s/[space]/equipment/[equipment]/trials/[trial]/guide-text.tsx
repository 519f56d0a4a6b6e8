import { Caution } from "@/lib/ui/caution";
import type { PartGuide } from "./part-guides";

/** What a part tells, what to have ready, what to do, and what to mind. */
export function GuideText({ guide, steps }: { readonly guide: PartGuide; readonly steps: readonly string[] }) {
  return (
    <>
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
      <div className="mb-6 flex flex-col gap-3">
        {guide.cautions.map((caution) => (
          <Caution key={caution}>{caution}</Caution>
        ))}
      </div>
    </>
  );
}
