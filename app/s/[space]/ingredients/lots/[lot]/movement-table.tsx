import Link from "next/link";
import type { IngredientKind } from "@/lib/model/ingredient-kinds";
import type { LotMovement } from "@/lib/model/ingredient-lot";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";
import { amountText, changeText } from "@/lib/ui/ingredient/amount-text";

interface MovementTableProps {
  readonly space: string;
  readonly kind: IngredientKind;
  readonly movements: readonly LotMovement[];
  readonly preferences: Preferences;
}

/** What came and went of a lot, by whom and why, the latest first. */
export function MovementTable({ space, kind, movements, preferences }: MovementTableProps) {
  return (
    <DataTable<LotMovement>
      caption="What came and went"
      captionHidden
      columns={[
        { id: "at", label: "Day", cell: ({ at }) => <Day at={at} /> },
        { id: "kind", label: "What", cell: (movement) => <What space={space} movement={movement} /> },
        { id: "change", label: "Change", isNumber: true, cell: ({ change }) => changeText(change, kind, preferences) },
        { id: "after", label: "Left", isNumber: true, cell: ({ after }) => amountText(after, kind, preferences) },
        { id: "actor", label: "By", cell: ({ actorName }) => actorName },
        { id: "why", label: "Why", cell: ({ why }) => (why === "" ? "—" : why) },
      ]}
      records={movements}
      keyOf={({ version }) => String(version)}
    />
  );
}

function What({ space, movement: { kind, brew } }: { readonly space: string; readonly movement: LotMovement }) {
  if (brew === null) return <>{kind}</>;
  return (
    <>
      {kind === "used" ? "used for " : "returned from "}
      <Link href={`/s/${space}/brews/${brew.id}`} className="target">
        {brew.title}
      </Link>
    </>
  );
}
