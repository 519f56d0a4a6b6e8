import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { RuleResult } from "@/lib/model/rule-results";
import { DataTable } from "@/lib/ui/data-table";
import { Quantity } from "@/lib/ui/quantity";

interface RuleTableProps {
  readonly results: readonly RuleResult[];
  readonly preferences: Preferences;
}

/** Each figure that a plan may hold: what it wants, what comes out here, and whether that is the same. */
export function RuleTable({ results, preferences }: RuleTableProps) {
  const shown = ({ quantity }: RuleResult) => ({ dimension: QUANTITIES[quantity].dimension, preferences });
  return (
    <DataTable<RuleResult>
      caption="Rules on this kettle"
      captionHidden
      columns={[
        { id: "figure", label: "Figure", cell: ({ quantity }) => QUANTITIES[quantity].label },
        { id: "rule", label: "Rule", cell: ({ isHeld }) => (isHeld ? "the same for all" : "follows the kettle") },
        {
          id: "wanted",
          label: "As written",
          isNumber: true,
          cell: (result) => <Quantity {...shown(result)} value={result.wanted} reason="not in this recipe" />,
        },
        {
          id: "here",
          label: "Here",
          isNumber: true,
          cell: (result) => <Quantity {...shown(result)} value={result.here} reason="not in this recipe" />,
        },
        {
          id: "difference",
          label: "Difference",
          isNumber: true,
          cell: (result) => (
            <Quantity
              {...shown(result)}
              value={result.here}
              differenceFrom={result.wanted ?? undefined}
              attention={result.isReached === false}
            />
          ),
        },
        { id: "state", label: "Held", cell: (result) => stateOf(result) },
      ]}
      records={results}
      keyOf={({ quantity }) => quantity}
    />
  );
}

function stateOf({ isReached, wanted, here }: RuleResult): string {
  if (isReached === null) return "left open";
  if (wanted === null && here === null) return "not in this recipe";
  return isReached ? "reached" : "not reached";
}
