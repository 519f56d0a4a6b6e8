import type { Metadata } from "next";
import Link from "next/link";
import { CAUTIONS, type CautionId } from "@/lib/calc/runsheet";
import { fermentationOf } from "@/lib/model/cellar/fermentation";
import { notStable } from "@/lib/model/cellar/stable-words";
import { BrewHeading } from "@/lib/ui/brew/brew-heading";
import { Caution } from "@/lib/ui/caution";
import { logAction } from "../log-action";
import { readBrew } from "../read-brew";
import { PackageForm } from "./package-form";
import { PackagedList } from "./packaged-list";
import { StableSection } from "./stable-section";

interface PackagePageProps {
  readonly params: Promise<{ readonly space: string; readonly brew: string }>;
}

const HERE: readonly CautionId[] = ["pressure", "glass", "closed room", "cleaner"];

export async function generateMetadata({ params }: PackagePageProps): Promise<Metadata> {
  const { space, brew: id } = await params;
  const { title, brewerName } = (await readBrew(space, id)).brew;
  return { title: `Package: ${title}, ${brewerName}` };
}

export default async function PackagePage({ params }: PackagePageProps) {
  const { space, brew: id } = await params;
  const { member, brew } = await readBrew(space, id);
  const { preferences, displayName } = member;
  const fermentation = fermentationOf(brew);
  const temperatures = fermentation.temperatures.map(({ value }) => value);
  return (
    <div className="brew-day">
      <BrewHeading home={`/s/${space}`} brew={brew} page="package" />
      <div className="my-6 flex flex-col gap-3">
        {HERE.map((caution) => (
          <Caution key={caution}>{CAUTIONS[caution]}</Caution>
        ))}
      </div>
      <StableSection brew={brew} fermentation={fermentation} preferences={preferences} />
      <PackagedList packagings={brew.log.packagings} preferences={preferences} />
      <p className="my-4">
        <Link href={`/s/${space}/brews/${id}/package/labels`} className="target">
          Labels for the bottles
        </Link>
      </p>
      {brew.mayWrite ? (
        <PackageForm
          brew={{ id, title: brew.title, packaging: brew.recipe.packaging }}
          me={displayName}
          litres={brew.predicted["package.volume"]?.value ?? null}
          warmest={temperatures.length === 0 ? null : Math.max(...temperatures.slice(-200))}
          altitudeM={brew.equipment.altitude}
          notReady={notStable(fermentation)}
          preferences={preferences}
          record={logAction.bind(null, space, id)}
        />
      ) : null}
    </div>
  );
}
