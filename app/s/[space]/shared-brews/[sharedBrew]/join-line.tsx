import Link from "next/link";
import type { EquipmentProfile } from "@/lib/model/equipment";
import type { SharedBrewSummary } from "@/lib/model/shared-brew";

interface JoinLineProps {
  readonly home: string;
  readonly shared: SharedBrewSummary;
  /** The reader's own kettles. */
  readonly kettles: readonly EquipmentProfile[];
}

/** The way in for a member who does not brew this yet: one of their kettles. */
export function JoinLine({ home, shared, kettles }: JoinLineProps) {
  return (
    <section aria-labelledby="join" className="mt-6">
      <h2 id="join">Join</h2>
      {kettles.length === 0 ? (
        <p className="mt-2">
          To take part, say what you brew on: <Link href={`${home}/equipment/new`}>describe your kettle</Link>.
        </p>
      ) : (
        <>
          <p className="mt-2 mb-3">See the recipe on your kettle, and plan the brew there if it fits.</p>
          <ul className="flex flex-wrap gap-3">
            {kettles.map(({ id, equipment }) => (
              <li key={id}>
                <Link
                  className="button button-quiet"
                  href={`${home}/recipes/${shared.recipeId}/kettles/${id}?sharedBrew=${shared.id}`}
                >
                  Join with {equipment.name}
                </Link>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
