import type { Order, OrderSubstitution } from "@/lib/model/order/order";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Day } from "@/lib/ui/day";
import { DecisionForm } from "./decision-form";
import type { OrderAction } from "./order-action";

interface SubstitutionListProps {
  readonly order: Pick<Order, "substitutions" | "state">;
  readonly ownId: string;
  readonly action: OrderAction;
}

/** Who gets what in place of what, and whether they agreed. Everybody decides on their own beer. */
export function SubstitutionList({ order, ownId, action }: SubstitutionListProps) {
  const { substitutions, state } = order;
  if (substitutions.length === 0) return null;
  const columns: readonly DataColumn<OrderSubstitution>[] = [
    { id: "who", label: "For", cell: ({ userName }) => userName },
    {
      id: "what",
      label: "Instead",
      cell: ({ from, to, ratio }) => `${to.name} in place of ${from.name}, ${String(ratio)} for 1`,
    },
    { id: "by", label: "Proposed by", cell: ({ proposedByName }) => proposedByName },
    {
      id: "state",
      label: "Answer",
      cell: ({ state: answer, decidedAt }) =>
        decidedAt === null ? (
          "not yet"
        ) : (
          <>
            {answer} on <Day at={decidedAt} />
          </>
        ),
    },
    {
      id: "decide",
      label: "Decide",
      isAction: true,
      cell: (each) =>
        each.userId === ownId && state === "open" && each.state !== "declined" ? (
          <DecisionForm substitution={each} action={action} />
        ) : null,
    },
  ];
  return (
    <section aria-labelledby="substitutions" className="mt-10">
      <h2 id="substitutions" className="mb-2">
        Replacements
      </h2>
      <DataTable
        caption="Replacements"
        captionHidden
        columns={columns}
        records={substitutions}
        keyOf={({ id }) => id}
      />
    </section>
  );
}
