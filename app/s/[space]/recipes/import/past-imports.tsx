import Link from "next/link";
import type { ActionResult } from "@/lib/model/action-result";
import type { PastImport } from "@/lib/server/exchange/imports";
import { DataTable } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";
import { WithdrawForm } from "./withdraw-form";

interface PastImportsProps {
  readonly home: string;
  readonly imports: readonly PastImport[];
  readonly withdrawAction: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

/** Imports that can still be looked up, and taken back as one while nothing depends on them. */
export function PastImports({ home, imports, withdrawAction }: PastImportsProps) {
  if (imports.length === 0) return null;
  return (
    <section aria-labelledby="past-imports" className="mt-12">
      <h2 id="past-imports" className="mb-3">
        Latest imports
      </h2>
      <DataTable
        caption="Imports, the latest first"
        captionHidden
        columns={[
          {
            id: "recipes",
            label: "Recipes",
            cell: ({ recipes }) => (
              <ul>
                {recipes.map(({ id, title }) => (
                  <li key={id}>
                    <Link href={`${home}/${id}`} className="target">
                      {title}
                    </Link>
                  </li>
                ))}
              </ul>
            ),
          },
          { id: "by", label: "By", cell: ({ byName }) => byName },
          { id: "at", label: "On", cell: ({ at }) => <Day at={at} /> },
          {
            id: "withdraw",
            label: "Withdraw",
            isAction: true,
            cell: ({ id, mayWithdraw }) => (mayWithdraw ? <WithdrawForm id={id} action={withdrawAction} /> : "—"),
          },
        ]}
        records={imports}
        keyOf={({ id }) => id}
      />
    </section>
  );
}
