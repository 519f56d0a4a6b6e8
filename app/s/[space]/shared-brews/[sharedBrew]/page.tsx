import type { Metadata } from "next";
import Link from "next/link";
import { roleMay } from "@/lib/model/roles";
import { listEquipment } from "@/lib/server/equipment/reads";
import { findRevision } from "@/lib/server/recipes/reads";
import { listPlanVersions } from "@/lib/server/shared-brews/reads";
import { markPlanSeenAction } from "./actions";
import { AcrossBrewers } from "./across-brewers";
import { BrewerTable } from "./brewer-table";
import { comparedBrews } from "./compared-brew";
import { LossMultiples } from "./loss-multiples";
import { PlanNews } from "./plan-news";
import { PlanSection } from "./plan-section";
import { readNews } from "./read-news";
import { readSharedBrew } from "./read-shared-brew";
import { WhoTakesPart } from "./who-takes-part";

interface SharedBrewPageProps {
  readonly params: Promise<{ readonly space: string; readonly sharedBrew: string }>;
}

export async function generateMetadata({ params }: SharedBrewPageProps): Promise<Metadata> {
  const { space, sharedBrew: id } = await params;
  return { title: (await readSharedBrew(space, id)).shared.title };
}

export default async function SharedBrewPage({ params }: SharedBrewPageProps) {
  const { space, sharedBrew: id } = await params;
  const { member, shared } = await readSharedBrew(space, id);
  const [recipe, kettles, versions] = await Promise.all([
    findRevision(member, shared.recipeId, shared.recipeRev),
    listEquipment(member),
    listPlanVersions(member, id),
  ]);
  const news = await readNews(member, shared, versions);
  const home = `/s/${space}`;
  const isOrganiser = roleMay(member.role, "organise");
  const { preferences } = member;
  const brews = comparedBrews(shared.brews);
  return (
    <>
      <h1>{shared.title}</h1>
      <p className="text-muted">
        <Link href={`${home}/recipes/${shared.recipeId}/revisions/${shared.recipeRev}`}>
          {recipe?.title ?? "A recipe no longer listed"}, revision {shared.recipeRev}
        </Link>
        ; {shared.state}.
      </p>
      {news === null ? null : (
        <PlanNews
          {...news}
          id={id}
          present={shared.plan}
          preferences={member.preferences}
          action={markPlanSeenAction.bind(null, space)}
        />
      )}
      <PlanSection
        versions={versions}
        plan={shared.plan}
        changeHref={isOrganiser ? `${home}/shared-brews/${id}/plan` : null}
      />
      <WhoTakesPart home={home} shared={shared} member={member} kettles={kettles} />
      {brews.length === 0 ? null : (
        <SideBySide {...{ home, brews, preferences }} comparisonHref={`${home}/shared-brews/${id}/comparison`} />
      )}
      {isOrganiser && brews.length > 0 ? (
        <p className="no-print mt-8">
          <Link href={`${home}/shared-brews/${id}/publish`}>Publish the result</Link>, for everybody to read
        </p>
      ) : null}
    </>
  );
}

function SideBySide({
  comparisonHref,
  ...props
}: Parameters<typeof AcrossBrewers>[0] & { readonly comparisonHref: string }) {
  return (
    <>
      <section aria-labelledby="brewers" className="mt-8">
        <h2 id="brewers" className="mb-2">
          Who brews
        </h2>
        <BrewerTable home={props.home} brews={props.brews.map(({ brew }) => brew)} />
      </section>
      <section aria-labelledby="across" className="mt-10">
        <h2 id="across" className="mb-2">
          Ledger across brewers
        </h2>
        <p className="mb-3">
          <Link href={comparisonHref} className="target">
            Compare these brews
          </Link>
          : intervals, curves, what explains the differences, and two brews side by side
        </p>
        <AcrossBrewers {...props} />
      </section>
      <LossMultiples {...props} />
    </>
  );
}
