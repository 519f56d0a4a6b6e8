import type { Preferences } from "@/lib/model/preferences";
import type { RecipeChange } from "@/lib/model/recipe-change";
import { DataTable } from "@/lib/ui/data-table";
import { ChangedValue } from "./changed-value";

interface ChangeTableProps {
  readonly changes: readonly RecipeChange[];
  readonly names: { readonly before: string; readonly after: string };
  readonly preferences: Preferences;
}

/** What somebody wrote differently, line by line; what it does to the beer stands below. */
export function ChangeTable({ changes, names, preferences }: ChangeTableProps) {
  return (
    <section aria-labelledby="changes">
      <h2 id="changes" className="mb-3">
        In the recipe
      </h2>
      {changes.length === 0 ? (
        <p className="text-muted">Ingredients, amounts and settings are the same.</p>
      ) : (
        <DataTable
          caption={`${names.after} against ${names.before}`}
          captionHidden
          columns={[
            { id: "what", label: "What", cell: ({ what, field }) => (field === "" ? what : `${what}: ${field}`) },
            { id: "kind", label: "Change", cell: ({ kind }) => kind },
            {
              id: "before",
              label: names.before,
              isNumber: true,
              cell: (change) => <ChangedValue change={change} side="before" preferences={preferences} />,
            },
            {
              id: "after",
              label: names.after,
              isNumber: true,
              cell: (change) => <ChangedValue change={change} side="after" preferences={preferences} />,
            },
            {
              id: "difference",
              label: "Difference",
              isNumber: true,
              cell: (change) => <ChangedValue change={change} side="difference" preferences={preferences} />,
            },
          ]}
          records={changes}
          keyOf={({ key }) => key}
        />
      )}
    </section>
  );
}
