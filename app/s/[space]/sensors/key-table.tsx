import Link from "next/link";
import type { ActionResult } from "@/lib/model/action-result";
import type { SensorKey } from "@/lib/model/sensor/sensor-token";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";
import { RevokeKeyForm } from "./revoke-key-form";

interface KeyTableProps {
  readonly home: string;
  readonly keys: readonly SensorKey[];
  readonly now: Date;
  readonly revokeAction: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** The member's keys; those that are over stay, so that it can be seen what posted once. */
export function KeyTable({ home, keys, now, revokeAction }: KeyTableProps) {
  const columns: readonly DataColumn<SensorKey>[] = [
    { id: "name", label: "Name", cell: ({ name }) => name },
    {
      id: "brew",
      label: "Posts to",
      cell: ({ brew }) =>
        brew === null ? (
          "every brew of yours"
        ) : (
          <Link href={`${home}/brews/${brew.id}`} className="target">
            {brew.title}
          </Link>
        ),
    },
    {
      id: "used",
      label: "Last used",
      cell: ({ lastUsedAt }) => (lastUsedAt === null ? "never" : <Day at={lastUsedAt} />),
    },
    { id: "ends", label: "Expires", cell: ({ expiresAt }) => <Day at={expiresAt} /> },
    {
      id: "revoke",
      label: "End it now",
      isAction: true,
      cell: (key) => (isOpen(key, now) ? <RevokeKeyForm sensor={key} action={revokeAction} /> : over(key)),
    },
  ];
  return <DataTable caption="Your keys" captionHidden columns={columns} records={keys} keyOf={({ id }) => id} />;
}

function isOpen({ revokedAt, expiresAt }: SensorKey, now: Date): boolean {
  return revokedAt === null && expiresAt.getTime() > now.getTime();
}

function over({ revokedAt }: SensorKey) {
  if (revokedAt === null) return "expired";
  return (
    <>
      revoked <Day at={revokedAt} />
    </>
  );
}
