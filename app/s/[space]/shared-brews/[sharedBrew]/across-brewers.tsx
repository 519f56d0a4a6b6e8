import Link from "next/link";
import type { Preferences } from "@/lib/model/preferences";
import { AcrossTable } from "@/lib/ui/across/across-table";
import { rowOf, type ComparedBrew } from "./compared-brew";

interface AcrossBrewersProps {
  readonly home: string;
  readonly brews: readonly ComparedBrew[];
  readonly preferences: Preferences;
}

/** The ledger across brewers; each number leads to where it is explained. */
export function AcrossBrewers({ home, brews, preferences }: AcrossBrewersProps) {
  const comparison = (id: string): string => `${home}/brews/${id}/comparison`;
  const columns = brews.map((compared) => ({
    key: compared.brew.id,
    name: compared.name,
    heading: (
      <Link href={comparison(compared.brew.id)} className="target">
        {compared.name}
      </Link>
    ),
    rowOf: (id: Parameters<typeof rowOf>[1]) => rowOf(compared, id),
  }));
  return (
    <AcrossTable
      columns={columns}
      preferences={preferences}
      explained={({ column, id, of }, number) => (
        <Link
          href={`${comparison(column)}?explain=${id}&of=${of}`}
          className={of === "measured" ? "explained font-semibold" : "explained"}
        >
          {number}
        </Link>
      )}
    />
  );
}
