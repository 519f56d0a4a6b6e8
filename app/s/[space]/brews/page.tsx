import type { Metadata } from "next";
import Link from "next/link";
import { BREW_STATES } from "@/lib/model/brew";
import { listRegister } from "@/lib/server/brews/register";
import { listDue } from "@/lib/server/cellar/due";
import { requireMember } from "@/lib/server/session";
import { EmptyState } from "@/lib/ui/empty-state";
import { DueList } from "./due-list";
import { RegisterTable } from "./register-table";
import { StateFilter } from "./state-filter";

export const metadata: Metadata = { title: "Brews" };

interface BrewsPageProps {
  readonly params: Promise<{ readonly space: string }>;
  readonly searchParams: Promise<{ readonly state?: string | string[] }>;
}

export default async function BrewsPage({ params, searchParams }: BrewsPageProps) {
  const member = await requireMember((await params).space);
  const wanted = (await searchParams).state;
  const [entries, due] = await Promise.all([listRegister(member), listDue(member, new Date())]);
  const state = BREW_STATES.find((each) => each === wanted) ?? null;
  const shown = entries.filter((entry) => state === null || entry.state === state);
  const home = `/s/${member.spaceSlug}`;
  return (
    <>
      <h1 className="mb-4">Brews</h1>
      {entries.length === 0 ? (
        <EmptyState action={<Link href={`${home}/recipes`}>Open a recipe</Link>}>
          Here stands every batch with its brewer, its kettle and its original extract, planned and measured. A batch
          begins at a recipe: choose a kettle there and plan the brew.
        </EmptyState>
      ) : (
        <>
          <DueList home={home} due={due} />
          <StateFilter home={home} entries={entries} chosen={state} />
          <p className="no-print mb-4">
            <Link href={`${home}/comparisons`} className="target">
              Ask the log
            </Link>
            : one number over all brews, compared
          </p>
          {shown.length === 0 ? (
            <p className="text-muted">No batch is {state}.</p>
          ) : (
            <RegisterTable home={home} entries={shown} preferences={member.preferences} />
          )}
        </>
      )}
    </>
  );
}
