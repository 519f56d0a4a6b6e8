import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { cache } from "react";
import { CAUTIONS } from "@/lib/calc/runsheet";
import { findEquipment } from "@/lib/server/equipment/reads";
import { requireMember } from "@/lib/server/session";
import { listTrials } from "@/lib/server/trials/reads";
import { Caution } from "@/lib/ui/caution";
import { DipStickTableView } from "@/lib/ui/equipment/dip-stick-table";
import { FigureTies } from "@/lib/ui/equipment/figure-ties";
import { ProfileSheet } from "@/lib/ui/equipment/profile-sheet";
import { beginTrialAction } from "./actions";
import { LearningSection } from "./learning-section";
import { ProfileScreen } from "./profile-screen";
import { TrialSection } from "./trial-section";

interface ProfilePageProps {
  readonly params: Promise<{ readonly space: string; readonly equipment: string }>;
}

const read = cache(async (space: string, id: string) => {
  const member = await requireMember(space);
  return { member, profile: (await findEquipment(member, id)) ?? notFound() };
});

export async function generateMetadata({ params }: ProfilePageProps): Promise<Metadata> {
  const { space, equipment } = await params;
  return { title: (await read(space, equipment)).profile.equipment.name };
}

export default async function ProfilePage({ params }: ProfilePageProps) {
  const { space, equipment: id } = await params;
  const { member, profile } = await read(space, id);
  const { equipment, ownerName, rev, mayWrite } = profile;
  const { dipStick } = equipment.kettle;
  return (
    <>
      <h1>{equipment.name}</h1>
      <p className="mb-4">
        Kettle of {ownerName}, revision {rev}. {mayWrite ? "" : `Only ${ownerName} or an organiser changes it.`}
      </p>
      <div className="mb-6">
        <Caution>{CAUTIONS.mains}</Caution>
      </div>
      <TrialSection
        space={space}
        equipmentId={id}
        trials={await listTrials(member, id)}
        begin={mayWrite ? beginTrialAction.bind(null, space, id) : null}
      />
      <LearningSection space={space} equipmentId={id} />
      {mayWrite ? (
        <ProfileScreen
          space={member.spaceSlug}
          id={id}
          equipment={equipment}
          rev={rev}
          preferences={member.preferences}
        />
      ) : (
        <ProfileSheet equipment={equipment} preferences={member.preferences} />
      )}
      {dipStick === undefined ? null : (
        <section className="mt-8 max-w-md">
          <DipStickTableView
            table={dipStick}
            caption={dipStick.basis === undefined ? "Dip-stick" : `Dip-stick, by ${dipStick.basis}`}
            preferences={member.preferences}
          />
        </section>
      )}
      <FigureTies ties={equipment.correlations ?? []} />
    </>
  );
}
