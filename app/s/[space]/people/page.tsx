import type { Metadata } from "next";
import Link from "next/link";
import { roleMay } from "@/lib/model/roles";
import { listInvitations } from "@/lib/server/invitations/reads";
import { requireMember } from "@/lib/server/session";
import { listPeople } from "@/lib/server/spaces/reads";
import { createInvitationAction, makeOrganiserAction, revokeInvitationAction } from "./actions";
import { InvitationForm } from "./invitation-form";
import { InvitationTable } from "./invitation-table";
import { OrganiserForm } from "./organiser-form";
import { PeopleTable } from "./people-table";
import { RoleList } from "./role-list";

export const metadata: Metadata = { title: "People" };

interface PeoplePageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function PeoplePage({ params }: PeoplePageProps) {
  const member = await requireMember((await params).space);
  const people = await listPeople(member);
  const mayInvite = member.spaceKind === "club" && roleMay(member.role, "organise");
  const invitations = mayInvite ? await listInvitations(member) : [];
  const others = people.filter(({ role }) => role !== "organiser");
  return (
    <>
      <h1 className="mb-6">People</h1>
      <div className="grid items-start gap-x-12 gap-y-10 lg:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
        <div className="flex flex-col gap-10">
          <section aria-label="Members">
            <PeopleTable people={people} ownId={member.userId} />
          </section>
          <InvitationTable
            invitations={invitations}
            revokeAction={revokeInvitationAction.bind(null, member.spaceSlug)}
          />
        </div>
        <div className="flex flex-col gap-10">
          {mayInvite ? (
            <section aria-labelledby="invite">
              <h2 id="invite" className="mb-4">
                Invite somebody
              </h2>
              <InvitationForm action={createInvitationAction.bind(null, member.spaceSlug)} />
            </section>
          ) : null}
          {mayInvite && others.length > 0 ? (
            <section aria-labelledby="hand-over">
              <h2 id="hand-over" className="mb-4">
                Make somebody organiser
              </h2>
              <OrganiserForm people={others} action={makeOrganiserAction.bind(null, member.spaceSlug)} />
            </section>
          ) : null}
          <RoleList />
          {mayInvite ? (
            <p>
              <Link href={`/s/${member.spaceSlug}/club-file`} className="target">
                The club as a file
              </Link>
            </p>
          ) : null}
        </div>
      </div>
    </>
  );
}
