import Link from "next/link";
import type { NextStep } from "./next-step";

/** One sentence and one button. */
export function NextStepLine({ step }: { readonly step: NextStep | null }) {
  if (step === null) return null;
  return (
    <div className="mt-4 flex flex-wrap items-center gap-x-5 gap-y-3">
      <p>{step.why}</p>
      <Link href={step.href} className="button">
        {step.label}
      </Link>
    </div>
  );
}
