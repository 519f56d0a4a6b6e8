import type { Person } from "@/lib/server/spaces/reads";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";
import { ROLE_NAMES } from "@/lib/ui/role-names";

/** Everybody in the space, by name. */
export function PeopleTable({ people, ownId }: { readonly people: readonly Person[]; readonly ownId: string }) {
  const columns: readonly DataColumn<Person>[] = [
    {
      id: "name",
      label: "Name",
      cell: ({ displayName, userId }) => (userId === ownId ? `${displayName} (you)` : displayName),
    },
    { id: "role", label: "Role", cell: ({ role }) => ROLE_NAMES[role] },
    { id: "since", label: "Since", cell: ({ joinedAt }) => <Day at={joinedAt} /> },
  ];
  return (
    <DataTable caption="Members" captionHidden columns={columns} records={people} keyOf={({ userId }) => userId} />
  );
}
