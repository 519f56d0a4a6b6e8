import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { cache } from "react";
import { findIsGiven, type Elsewhere } from "@/lib/server/learning/contributions";
import { findLearning } from "@/lib/server/learning/learned";
import { requireMember } from "@/lib/server/session";
import { AcceptLearned } from "./accept-learned";
import { giveKettleAction } from "./actions";
import { BrewsThatCount } from "./brews-that-count";
import { GiveKettle } from "./give-kettle";
import { HowItComesAbout } from "./how-it-comes-about";

interface LearnedPageProps {
  readonly params: Promise<{ readonly space: string; readonly equipment: string }>;
  readonly searchParams: Promise<{ readonly since?: string | string[] }>;
}

const read = cache(async (space: string, id: string, since: string | null) => {
  const member = await requireMember(space);
  return { member, learning: (await findLearning(member, id, since)) ?? notFound() };
});

async function readPage({ params, searchParams }: LearnedPageProps) {
  const { space, equipment } = await params;
  const { since } = await searchParams;
  return { ...(await read(space, equipment, typeof since === "string" ? since : null)), space, equipment };
}

export async function generateMetadata(props: LearnedPageProps): Promise<Metadata> {
  const { profile } = (await readPage(props)).learning;
  return { title: `What brews tell of ${profile.equipment.name}` };
}

export default async function LearnedPage(props: LearnedPageProps) {
  const { member, learning, space, equipment: id } = await readPage(props);
  const { profile, brews, counted, kettle, others, elsewhere, learned } = learning;
  const isOwner = profile.ownerId === member.userId;
  const since = counted.length === brews.length ? null : (counted[0]?.id ?? null);
  const home = `/s/${space}/equipment/${id}`;
  return (
    <>
      <h1>What brews tell of {profile.equipment.name}</h1>
      <p className="mb-6 max-w-3xl">
        Each logged brew says something of the figures in{" "}
        <Link href={home}>the profile of this kettle, revision {profile.rev}</Link>. Added up with what was known
        before, and with the{" "}
        {others.length === 0 ? "other kettles of its kind, once they have brews," : othersWords(others.length)} they
        make the next plan narrower. {elsewhereWords(elsewhere)}Nothing changes by itself.
      </p>
      {brews.length === 0 ? (
        <p className="mb-6">
          No brew on this kettle has readings yet. The first one that has its volumes and gravities logged tells
          something.
        </p>
      ) : (
        <BrewsThatCount
          space={space}
          here={`${home}/learned`}
          brews={brews}
          counted={counted.map((brew, i) => ({ ...brew, fit: learned.fits[i] ?? null }))}
          preferences={member.preferences}
        />
      )}
      <AcceptLearned
        space={space}
        equipmentId={id}
        rev={profile.rev}
        since={since}
        rows={learned.rows}
        titles={counted.map(({ title }) => title)}
        mayWrite={profile.mayWrite}
        preferences={member.preferences}
      />
      {counted.length === 0 ? null : (
        <HowItComesAbout kettle={kettle} others={[...others.map((other) => other.kettle), ...elsewhere.kettles]} />
      )}
      {isOwner ? (
        <GiveKettle isGiven={await findIsGiven(member, id)} action={giveKettleAction.bind(null, space, id)} />
      ) : null}
    </>
  );
}

function othersWords(count: number): string {
  return count === 1 ? "one other kettle of its kind in the club," : `${String(count)} other kettles of its kind,`;
}

function elsewhereWords({ kettles, people }: Elsewhere): string {
  if (kettles.length === 0) return "";
  return `So do ${String(kettles.length)} kettles of its kind that ${String(people)} people of other clubs gave without names. `;
}
