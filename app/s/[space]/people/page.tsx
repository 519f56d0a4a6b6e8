import type { Metadata } from "next";
import { roleMay, ROLES } from "@/lib/model/roles";
import { listInvitations } from "@/lib/server/invitations/reads";
import { requireMember } from "@/lib/server/session";
import { listPeople } from "@/lib/server/spaces/reads";
import { ROLE_DUTIES, ROLE_NAMES } from "@/lib/ui/role-names";
import { createInvitationAction, revokeInvitationAction } from "./actions";
import { InvitationForm } from "./invitation-form";
import { InvitationTable } from "./invitation-table";
import { PeopleTable } from "./people-table";

export const metadata: Metadata = { title: "People" };

interface PeoplePageProps {
  readonly params: Promise<{ readonly space: string }>;
}

export default async function PeoplePage({ params }: PeoplePageProps) {
  const member = await requireMember((await params).space);
  const people = await listPeople(member);
  const mayInvite = member.spaceKind === "club" && roleMay(member.role, "organise");
  const invitations = mayInvite ? await listInvitations(member) : [];
  return (
    <>
      <h1 className="mb-6">People</h1>
      <div className="grid gap-x-12 gap-y-10 lg:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
        <section aria-label="Members">
          <PeopleTable people={people} ownId={member.userId} />
        </section>
        {mayInvite ? (
          <section aria-labelledby="invite">
            <h2 id="invite" className="mb-4">
              Invite somebody
            </h2>
            <InvitationForm action={createInvitationAction.bind(null, member.spaceSlug)} />
            <InvitationTable
              invitations={invitations}
              revokeAction={revokeInvitationAction.bind(null, member.spaceSlug)}
            />
          </section>
        ) : null}
        <section aria-labelledby="roles">
          <h2 id="roles" className="mb-3">
            What the roles mean
          </h2>
          <dl className="grid grid-cols-[auto_1fr] gap-x-6 gap-y-1">
            {ROLES.map((role) => (
              <div key={role} className="contents">
                <dt className="font-semibold">{ROLE_NAMES[role]}</dt>
                <dd>{ROLE_DUTIES[role]}</dd>
              </div>
            ))}
          </dl>
        </section>
      </div>
    </>
  );
}
