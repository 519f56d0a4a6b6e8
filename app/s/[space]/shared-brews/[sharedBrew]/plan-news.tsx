import { QUANTITIES, type Ledger, type QuantityId } from "@/lib/calc/ledger";
import type { ActionResult } from "@/lib/model/action-result";
import { planDifferences } from "@/lib/model/plan-difference";
import type { Preferences } from "@/lib/model/preferences";
import type { PlanVersion } from "@/lib/model/shared-brew";
import { DataTable } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";
import { SeenForm } from "./seen-form";

interface PlanNewsProps {
  readonly id: string;
  readonly seen: PlanVersion;
  readonly present: PlanVersion;
  /** The recipe of both versions as written; null where it is the same revision. */
  readonly ledgers: { readonly before: Ledger; readonly after: Ledger } | null;
  readonly notes: readonly string[];
  readonly preferences: Preferences;
  readonly action: (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
}

const COMPARED: readonly QuantityId[] = [
  "fermenter.volume",
  "fermenter.originalExtract",
  "package.alcohol",
  "fermenter.bitterness",
  "fermenter.colour",
  "mash.grist",
  "day.time",
];

/** What has changed since the member last looked: in words, and in figures where the revision is another. */
export function PlanNews({ id, seen, present, ledgers, notes, preferences, action }: PlanNewsProps) {
  return (
    <section aria-labelledby="news" className="notice notice-attention mt-6 max-w-none">
      <h2 id="news">
        Plan version {present.version}; you have seen version {seen.version}
      </h2>
      {notes.map((note) => (
        <p key={note}>“{note}”</p>
      ))}
      <ul className="my-2 list-disc pl-5">
        {planDifferences(seen, present).map((words) => (
          <li key={words}>{words}.</li>
        ))}
      </ul>
      {ledgers === null ? null : <FigureTable ledgers={ledgers} preferences={preferences} />}
      <SeenForm id={id} version={present.version} action={action} />
    </section>
  );
}

function FigureTable({
  ledgers,
  preferences,
}: Required<Pick<PlanNewsProps, "preferences">> & {
  readonly ledgers: NonNullable<PlanNewsProps["ledgers"]>;
}) {
  const shown = (id: QuantityId) => ({ dimension: QUANTITIES[id].dimension, preferences });
  const { before, after } = ledgers;
  return (
    <DataTable<QuantityId>
      caption="The recipe as written"
      columns={[
        { id: "quantity", label: "Quantity", cell: (id) => QUANTITIES[id].label },
        {
          id: "before",
          label: "Before",
          isNumber: true,
          cell: (id) => <Quantity {...shown(id)} value={before.quantities[id]} />,
        },
        {
          id: "now",
          label: "Now",
          isNumber: true,
          cell: (id) => <Quantity {...shown(id)} value={after.quantities[id]} />,
        },
        {
          id: "difference",
          label: "Difference",
          isNumber: true,
          cell: (id) => (
            <Quantity {...shown(id)} value={after.quantities[id]} differenceFrom={before.quantities[id] ?? undefined} />
          ),
        },
      ]}
      records={COMPARED}
      keyOf={(id) => id}
    />
  );
}
