import type { Metadata } from "next";
import Link from "next/link";
import { CAUTIONS } from "@/lib/calc/runsheet";
import { trialDay } from "@/lib/model/trial/trial";
import { Caution } from "@/lib/ui/caution";
import { readTrial, type TrialParams } from "./read-trial";
import { TrialScreen } from "./trial-screen";

interface TrialPageProps {
  readonly params: Promise<TrialParams>;
}

export async function generateMetadata({ params }: TrialPageProps): Promise<Metadata> {
  const { space, equipment, trial: id } = await params;
  const { profile, trial } = await readTrial(space, equipment, id);
  return { title: `Commissioning of ${profile.equipment.name}, ${trialDay(trial.begunAt)}` };
}

export default async function TrialPage({ params }: TrialPageProps) {
  const { space, equipment: equipmentId, trial: id } = await params;
  const { member, profile, trial } = await readTrial(space, equipmentId, id);
  const { equipment, rev, mayWrite, ownerName } = profile;
  return (
    <div className="brew-day">
      <h1>Commission {equipment.name} with water</h1>
      <p className="mb-4">
        Begun on {trialDay(trial.begunAt)} by {trial.begunByName}, for{" "}
        <Link href={`/s/${space}/equipment/${equipmentId}`}>its profile</Link>. Do the parts in any order, leave any
        out, and do any again.{" "}
        {trial.accepted === null
          ? ""
          : `Revision ${trial.accepted.rev} of the profile took figures of this trial, by ${trial.accepted.byName}. `}
        {mayWrite ? "" : `Only ${ownerName} or an organiser writes here.`}
      </p>
      <div className="mb-6 flex flex-col gap-3">
        <Caution>{CAUTIONS.mains}</Caution>
      </div>
      <TrialScreen
        space={member.spaceSlug}
        trial={trial}
        equipment={equipment}
        rev={rev}
        mayWrite={mayWrite}
        preferences={member.preferences}
      />
    </div>
  );
}
