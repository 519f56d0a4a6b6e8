import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { roleMay } from "@/lib/model/roles";
import { listEquipment } from "@/lib/server/equipment/reads";
import { findRevision } from "@/lib/server/recipes/reads";
import { requireMember } from "@/lib/server/session";
import { findSharedBrew } from "@/lib/server/shared-brews/reads";
import { Day } from "@/lib/ui/day";
import { AcrossBrewers } from "./across-brewers";
import { BrewerTable } from "./brewer-table";
import { comparedBrews } from "./compared-brew";
import { JoinLine } from "./join-line";
import { LossMultiples } from "./loss-multiples";

interface SharedBrewPageProps {
  readonly params: Promise<{ readonly space: string; readonly sharedBrew: string }>;
}

const readSharedBrew = cache(
  async (space: string, id: string) => (await findSharedBrew(await requireMember(space), id)) ?? notFound(),
);

export async function generateMetadata({ params }: SharedBrewPageProps): Promise<Metadata> {
  const { space, sharedBrew: id } = await params;
  return { title: (await readSharedBrew(space, id)).title };
}

export default async function SharedBrewPage({ params }: SharedBrewPageProps) {
  const { space, sharedBrew: id } = await params;
  const member = await requireMember(space);
  const shared = await readSharedBrew(space, id);
  const [recipe, kettles] = await Promise.all([
    findRevision(member, shared.recipeId, shared.recipeRev),
    listEquipment(member),
  ]);
  const home = `/s/${space}`;
  const isIn = shared.brews.some(({ brewerId }) => brewerId === member.userId);
  const mayJoin = !isIn && shared.state !== "closed" && shared.state !== "cancelled" && roleMay(member.role, "brew");
  const brews = comparedBrews(shared.brews);
  return (
    <>
      <h1>{shared.title}</h1>
      <p className="text-muted">
        <Link href={`${home}/recipes/${shared.recipeId}/revisions/${shared.recipeRev}`}>
          {recipe?.title ?? "A recipe no longer listed"}, revision {shared.recipeRev}
        </Link>
        {shared.plannedAt === null ? null : (
          <>
            ; planned for <Day at={shared.plannedAt} />
          </>
        )}
        ; {shared.state}.
      </p>
      {mayJoin ? (
        <JoinLine home={home} shared={shared} kettles={kettles.filter(({ ownerId }) => ownerId === member.userId)} />
      ) : null}
      <section aria-labelledby="brewers" className="mt-8">
        <h2 id="brewers" className="mb-2">
          Who brews
        </h2>
        {brews.length === 0 ? (
          <p className="text-muted">Nobody has joined yet.</p>
        ) : (
          <BrewerTable home={home} brews={brews.map(({ brew }) => brew)} />
        )}
      </section>
      {brews.length === 0 ? null : <SideBySide home={home} brews={brews} preferences={member.preferences} />}
    </>
  );
}

function SideBySide(props: Parameters<typeof AcrossBrewers>[0]) {
  return (
    <>
      <section aria-labelledby="across" className="mt-10">
        <h2 id="across" className="mb-2">
          Ledger across brewers
        </h2>
        <AcrossBrewers {...props} />
      </section>
      <LossMultiples {...props} />
    </>
  );
}
