import type { ComparedRow, LedgerComparison } from "@/lib/calc/compare";
import type { QuantityId } from "@/lib/calc/ledger";
import type { Brew } from "@/lib/model/brew";
import { comparisonOf } from "@/lib/model/brew-comparison";
import { meterReadings } from "@/lib/model/meter-readings";
import { comparedReadings } from "@/lib/model/compared-readings";
import { planOf } from "@/lib/model/brew-plan";

/** One brewer's batch with what was planned and measured; null where the library refuses its figures. */
export interface ComparedBrew {
  readonly brew: Brew;
  /** The brewer, and the kettle as well where one brews on two. */
  readonly name: string;
  readonly comparison: LedgerComparison | null;
}

export function comparedBrews(brews: readonly Brew[]): readonly ComparedBrew[] {
  const sheets = new Map<string, number>();
  for (const { brewerId } of brews) sheets.set(brewerId, (sheets.get(brewerId) ?? 0) + 1);
  return brews
    .map((brew) => {
      const plan = planOf(brew);
      const isOnly = sheets.get(brew.brewerId) === 1;
      return {
        brew,
        name: isOnly ? brew.brewerName : `${brew.brewerName}, ${brew.equipmentName}`,
        comparison: plan === null ? null : comparisonOf(plan, comparedReadings(brew), meterReadings(brew)),
      };
    })
    .sort((a, b) => a.name.localeCompare(b.name, "en-GB"));
}

export function rowOf({ comparison }: ComparedBrew, id: QuantityId): ComparedRow | null {
  return comparison?.rows.find(({ quantity }) => quantity === id) ?? null;
}
