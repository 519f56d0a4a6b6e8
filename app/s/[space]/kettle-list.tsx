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
              <li key={id} className="pb-2">
                <Link href={`${home}/equipment/${id}`} className="target">
                  {equipment.name}
                </Link>
                <p className="text-sm text-muted">
                  {ownerName}, <Quantity value={equipment.usualBatch} dimension="volume" preferences={preferences} /> a
                  batch
                </p>
              </li>
            ))}
          </ul>
          <p className="mt-3">{add}</p>
        </>
      )}
    </section>
  );
}
