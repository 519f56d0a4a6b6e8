import type { ActionResult } from "@/lib/model/action-result";
import type { Invitation } from "@/lib/model/invitation";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";
import { ROLE_NAMES } from "@/lib/ui/role-names";
import { RevokeForm } from "./revoke-form";

interface InvitationTableProps {
  readonly invitations: readonly Invitation[];
  readonly revokeAction: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** The invitations that can still be used. */
export function InvitationTable({ invitations, revokeAction }: InvitationTableProps) {
  const open = invitations.filter(isOpen);
  if (open.length === 0) return null;
  const columns: readonly DataColumn<Invitation>[] = [
    { id: "for", label: "For", cell: ({ email }) => email ?? "whoever has the link" },
    { id: "role", label: "Role", cell: ({ role }) => ROLE_NAMES[role] },
    { id: "uses", label: "Used", isNumber: true, cell: ({ uses, maxUses }) => `${uses}\u00a0of\u00a0${maxUses}` },
    { id: "ends", label: "Ends", cell: ({ expiresAt }) => <Day at={expiresAt} /> },
    {
      id: "revoke",
      label: "End it now",
      isAction: true,
      cell: ({ id }) => <RevokeForm id={id} action={revokeAction} />,
    },
  ];
  return (
    <section aria-labelledby="invitations">
      <h2 id="invitations" className="mb-3">
        Open invitations
      </h2>
      <DataTable caption="Open invitations" captionHidden columns={columns} records={open} keyOf={({ id }) => id} />
    </section>
  );
}

function isOpen({ uses, maxUses, expiresAt, revokedAt }: Invitation): boolean {
  return revokedAt === null && uses < maxUses && expiresAt.getTime() > Date.now();
}
