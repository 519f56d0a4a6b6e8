import type { PlanVersion } from "@/lib/model/shared-brew";
import { planDifferences } from "@/lib/model/plan-difference";
import { Day } from "@/lib/ui/day";

/** Every version with what it changed and why, the newest first. */
export function VersionList({ versions }: { readonly versions: readonly PlanVersion[] }) {
  return (
    <ol className="list-ruled max-w-2xl">
      {versions.map((version, i) => (
        <li key={version.version} className="py-2">
          <p>
            Version {version.version}, <Day at={version.madeAt} /> by {version.madeByName}
            {version.note === "" ? "" : `: ${version.note}`}
          </p>
          <Changes before={versions[i + 1]} after={version} />
        </li>
      ))}
    </ol>
  );
}

function Changes({ before, after }: { readonly before: PlanVersion | undefined; readonly after: PlanVersion }) {
  if (before === undefined) return null;
  return (
    <ul className="list-disc pl-5 text-muted">
      {planDifferences(before, after).map((words) => (
        <li key={words}>{words}.</li>
      ))}
    </ul>
  );
}
