import Link from "next/link";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { SharedBrewSummary } from "@/lib/model/shared-brew";

interface JoinSectionProps {
  readonly home: string;
  readonly shared: SharedBrewSummary;
  /** The reader's own kettles that do not take part. */
  readonly kettles: readonly EquipmentProfile[];
  /** Those of others, for an organiser who enters somebody. */
  readonly others: readonly EquipmentProfile[];
  readonly isIn: boolean;
}

/** The ways in: one's own kettles, each with its sheet to look at first. */
export function JoinSection({ home, shared, kettles, others, isIn }: JoinSectionProps) {
  const sheetOf = (id: string): string => `${home}/shared-brews/${shared.id}/kettles/${id}`;
  return (
    <section aria-labelledby="join" className="no-print mt-8">
      <h2 id="join">{isIn ? "Join with another kettle" : "Join"}</h2>
      {kettles.length === 0 && !isIn ? (
        <p className="mt-2">
          To take part, say what you brew on: <Link href={`${home}/equipment/new`}>describe your kettle</Link>.
        </p>
      ) : (
        <>
          <p className="mt-2 mb-3">
            See the recipe on your kettle under these rules, and whether it fits, before you join.
          </p>
          <ul className="flex flex-wrap gap-3">
            {kettles.map(({ id, equipment }) => (
              <li key={id}>
                <Link className="button button-quiet" href={sheetOf(id)}>
                  Join with {equipment.name}
                </Link>
              </li>
            ))}
          </ul>
        </>
      )}
      {others.length === 0 ? null : (
        <details className="mt-3">
          <summary className="cursor-pointer py-3">Enter somebody</summary>
          <ul className="list-ruled max-w-2xl">
            {others.map(({ id, equipment, ownerName }) => (
              <li key={id} className="py-1">
                <Link className="target" href={sheetOf(id)}>
                  {ownerName} with {equipment.name}
                </Link>
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
