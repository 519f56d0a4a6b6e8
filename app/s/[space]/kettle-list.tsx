import Link from "next/link";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { Preferences } from "@/lib/model/preferences";
import { roleMay, type Role } from "@/lib/model/roles";
import { EmptyState } from "@/lib/ui/empty-state";
import { Quantity } from "@/lib/ui/quantity";

interface KettleListProps {
  readonly home: string;
  readonly kettles: readonly EquipmentProfile[];
  readonly role: Role;
  readonly preferences: Preferences;
}

/** What the space brews on, with its owners and usual batches. */
export function KettleList({ home, kettles, role, preferences }: KettleListProps) {
  const add = roleMay(role, "keep equipment") ? (
    <Link href={`${home}/equipment/new`}>Describe a kettle</Link>
  ) : undefined;
  return (
    <section aria-labelledby="kettles">
      <h2 id="kettles" className="mb-3">
        Kettles
      </h2>
      {kettles.length === 0 ? (
        <EmptyState action={add}>
          A kettle with its heater, losses and limits. Without one, no amount and no time can be computed.
        </EmptyState>
      ) : (
        <>
          <ul className="list-ruled">
            {kettles.map(({ id, ownerName, equipment }) => (
              <li key={id} className="flex items-center justify-between gap-4">
                <span className="min-w-0">
                  <Link href={`${home}/equipment/${id}`} className="target">
                    {equipment.name}
                  </Link>
                  <span className="block pb-2 text-sm text-muted">{ownerName}</span>
                </span>
                <Quantity value={equipment.usualBatch} dimension="volume" preferences={preferences} digits={0} />
              </li>
            ))}
          </ul>
          <p className="mt-3">{add}</p>
        </>
      )}
    </section>
  );
}
