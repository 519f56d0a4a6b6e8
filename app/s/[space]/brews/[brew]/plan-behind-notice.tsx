import Link from "next/link";
import type { Brew } from "@/lib/model/brew";
import { planDifferences } from "@/lib/model/plan-difference";
import type { Member } from "@/lib/server/session";
import { findPlanBehind } from "@/lib/server/shared-brews/plan-behind";
import { Notice } from "@/lib/ui/notice";

interface PlanBehindNoticeProps {
  readonly member: Member;
  readonly brew: Brew;
}

/** That the shared brew has gone on to another plan, what that changes, and what to do about it. */
export async function PlanBehindNotice({ member, brew }: PlanBehindNoticeProps) {
  const behind = await findPlanBehind(member, brew.id);
  if (behind === null) return null;
  const { sharedBrewId, equipmentId, planned, present } = behind;
  const sharedBrew = `/s/${member.spaceSlug}/shared-brews/${sharedBrewId}`;
  const changes = (
    <ul className="my-2 list-disc pl-5">
      {planDifferences(planned, present).map((words) => (
        <li key={words}>{words}.</li>
      ))}
    </ul>
  );
  const versions = (
    <>
      This brew was planned under version {planned.version} of the plan; the <Link href={sharedBrew}>shared brew</Link>{" "}
      has version {present.version} now.
    </>
  );
  // Once it is brewed, there is nothing to do about it.
  if (brew.state !== "planned") {
    return (
      <div className="no-print mt-4">
        <p>
          {versions} It stays under version {planned.version} and is compared with what was planned then.
        </p>
        <details>
          <summary className="cursor-pointer py-3">What version {present.version} has otherwise</summary>
          {changes}
        </details>
      </div>
    );
  }
  return (
    <div className="mt-4">
      <Notice kind="attention">
        <p>{versions}</p>
        {changes}
        <p>
          What is planned is never computed anew. Choose day, water and yeast again in{" "}
          <Link href={`${sharedBrew}/kettles/${equipmentId}`}>this kettle’s part</Link>, and keep to the other rules by
          hand where you can; whether it counts where amounts would be others, agree with an organiser.
        </p>
      </Notice>
    </div>
  );
}
