import Link from "next/link";
import { windowInWords } from "@/lib/model/plain-day";
import type { PlanVersion } from "@/lib/model/shared-brew";
import { rulesInWords } from "@/lib/model/shared-brew-rules";
import { VersionList } from "./version-list";

interface PlanSectionProps {
  readonly versions: readonly PlanVersion[];
  readonly plan: PlanVersion;
  /** null for a reader who may not change it. */
  readonly changeHref: string | null;
}

/** The plan as it is now, and its earlier versions. */
export function PlanSection({ versions, plan, changeHref }: PlanSectionProps) {
  return (
    <section aria-labelledby="plan" className="mt-6">
      <div className="flex flex-wrap items-center justify-between gap-4">
        <h2 id="plan">The plan, version {plan.version}</h2>
        {changeHref === null ? null : (
          <Link href={changeHref} className="button button-quiet no-print">
            Change the plan
          </Link>
        )}
      </div>
      <p className="mt-2">Days to brew: {windowInWords(plan.window)}.</p>
      <ul className="mt-2 list-disc pl-5">
        {rulesInWords(plan.rules).map((words) => (
          <li key={words}>{words}.</li>
        ))}
      </ul>
      {versions.length < 2 ? null : (
        <details className="mt-3">
          <summary className="cursor-pointer py-3">Earlier versions of the plan</summary>
          <VersionList versions={versions} />
        </details>
      )}
    </section>
  );
}
