import type { Metadata } from "next";
import { alcoholByVolume, apparentRange } from "@/lib/calc/alcohol";
import { degreesPlato } from "@/lib/calc/units";
import type { Brew } from "@/lib/model/brew";
import { fermentationOf, lastGravity } from "@/lib/model/cellar/fermentation";
import { allergenProposal } from "@/lib/model/cellar/label";
import { environment } from "@/lib/server/environment";
import { BrewHeading } from "@/lib/ui/brew/brew-heading";
import { readBrew } from "../../read-brew";
import { LabelScreen } from "./label-screen";

interface LabelsPageProps {
  readonly params: Promise<{ readonly space: string; readonly brew: string }>;
}

export async function generateMetadata({ params }: LabelsPageProps): Promise<Metadata> {
  const { space, brew: id } = await params;
  const { title, brewerName } = (await readBrew(space, id)).brew;
  return { title: `Labels: ${title}, ${brewerName}` };
}

export default async function LabelsPage({ params }: LabelsPageProps) {
  const { space, brew: id } = await params;
  const { member, brew } = await readBrew(space, id);
  const last = brew.log.packagings.at(-1);
  const bottles = last?.content.containers.reduce((sum, { count }) => sum + count, 0);
  return (
    <>
      <div className="no-print">
        <BrewHeading home={`/s/${space}`} brew={brew} page="package" />
      </div>
      <LabelScreen
        beer={brew.title}
        brewer={brew.brewerName}
        packagedAt={last === undefined ? new Date() : new Date(last.at)}
        alcohol={alcoholOf(brew)}
        allergens={allergenProposal(brew.recipe.fermentables)}
        count={bottles ?? null}
        origin={environment.appOrigin}
        path={`/s/${space}/brews/${id}`}
        preferences={member.preferences}
      />
    </>
  );
}

/** By the last gravity, else as planned; null where neither tells. */
function alcoholOf(brew: Brew): { readonly value: number; readonly isMeasured: boolean } | null {
  const fermentation = fermentationOf(brew);
  const { original } = fermentation;
  const last = lastGravity(fermentation);
  const planned = brew.predicted["package.alcohol"];
  if (original !== null && last !== null) {
    const { min, max } = apparentRange(original.plato);
    const apparentPlato = degreesPlato(Math.min(max, Math.max(min, last.value)));
    return { value: alcoholByVolume({ originalPlato: original.plato, apparentPlato }), isMeasured: true };
  }
  return planned === undefined ? null : { value: planned.value, isMeasured: false };
}
