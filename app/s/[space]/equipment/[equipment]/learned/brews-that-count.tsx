import Link from "next/link";
import type { BrewFit } from "@/lib/calc/learn";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { TellingBrew } from "@/lib/server/learning/evidence";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";

interface BrewsThatCountProps {
  readonly space: string;
  /** Address of this page. */
  readonly here: string;
  readonly brews: readonly TellingBrew[];
  readonly counted: readonly CountedBrew[];
  readonly preferences: Preferences;
}

type CountedBrew = TellingBrew & { readonly fit: BrewFit | null };

const DAY = new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeZone: "UTC" });

/** The brews behind the figures, how well each agrees with the others, and from which one on they count. */
export function BrewsThatCount({ space, here, brews, counted, preferences }: BrewsThatCountProps) {
  const earlier = brews.length - counted.length;
  return (
    <section aria-labelledby="brews" className="mb-8">
      <h2 id="brews">Brews that count</h2>
      <p className="mb-3 max-w-3xl">
        A reading that the balances suspect does not count. A brew that is farther off from the others than one in a
        hundred counts less. After a change at the kettle (scale removed, another pump, another crush), let the brews
        count from the first one after it.
      </p>
      <DataTable
        caption="Brews that count, in order of time"
        captionHidden
        columns={columnsOf({ space, here, preferences })}
        records={counted}
        keyOf={({ id }) => id}
      />
      {earlier === 0 ? null : (
        <p className="mt-3">
          {earlier} earlier {earlier === 1 ? "brew does" : "brews do"} not count.{" "}
          <Link href={here} className="target">
            Count all
          </Link>
        </p>
      )}
    </section>
  );
}

function columnsOf({
  space,
  here,
  preferences,
}: Pick<BrewsThatCountProps, "space" | "here" | "preferences">): readonly DataColumn<CountedBrew>[] {
  return [
    {
      id: "brew",
      label: "Brew",
      cell: ({ id, title, startedAt }) => (
        <Link href={`/s/${space}/brews/${id}/comparison`} className="target">
          {title}, {DAY.format(startedAt)}
        </Link>
      ),
    },
    {
      id: "readings",
      label: "Readings",
      isNumber: true,
      cell: ({ evidence }) => String(evidence.readings),
    },
    {
      id: "left-out",
      label: "Suspect, left out",
      cell: ({ evidence }) =>
        evidence.leftOut.length === 0
          ? "none"
          : evidence.leftOut.map((quantity) => QUANTITIES[quantity].label).join(", "),
    },
    {
      id: "weight",
      label: "Counts",
      isNumber: true,
      cell: ({ fit }) => (
        <Quantity value={fit?.weight ?? null} dimension="fraction" preferences={preferences} digits={0} />
      ),
    },
    {
      id: "since",
      label: "From here on",
      isAction: true,
      cell: ({ id, startedAt }) => (
        <Link href={`${here}?since=${id}`} className="target">
          Count from {DAY.format(startedAt)}
        </Link>
      ),
    },
  ];
}
