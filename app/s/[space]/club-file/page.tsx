import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { LEFT_OUT } from "@/lib/model/club-file/parts";
import { roleMay } from "@/lib/model/roles";
import { requireMember } from "@/lib/server/session";
import { listPeople } from "@/lib/server/spaces/reads";
import { ClubFileScreen } from "./club-file-screen";

export const metadata: Metadata = { title: "The club as a file" };

interface ClubFilePageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function ClubFilePage({ params }: ClubFilePageProps) {
  const member = await requireMember((await params).space);
  if (!roleMay(member.role, "organise") || member.spaceKind !== "club") notFound();
  const people = await listPeople(member);
  const home = `/s/${member.spaceSlug}/club-file`;
  return (
    <>
      <h1 className="mb-2">The club as a file</h1>
      <p className="mb-6 text-muted">
        Recipes with all their revisions, kettles, shared brews, brews and their logs, and group orders, as documented
        JSON. People are in it by the name they show, and by nothing else.
      </p>
      <section aria-labelledby="download" className="mb-10">
        <h2 id="download" className="mb-2">
          Keep a copy
        </h2>
        <p className="mb-3">
          <a href={`${home}/download`} className="button" download>
            Download the club
          </a>
        </p>
        <details className="text-muted">
          <summary className="cursor-pointer py-3">What is not in it, and why</summary>
          <ul className="list-disc ps-5">
            {[...new Set(Object.values(LEFT_OUT))].map((reason) => (
              <li key={reason}>{reason}</li>
            ))}
          </ul>
        </details>
      </section>
      <ClubFileScreen home={home} people={people.map(({ userId, displayName }) => ({ userId, displayName }))} />
    </>
  );
}
