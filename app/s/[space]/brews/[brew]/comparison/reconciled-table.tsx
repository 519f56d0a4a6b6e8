import type { LedgerComparison, ReconciledQuantity } from "@/lib/calc/compare";
import { QUANTITIES, STATIONS } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { intervalOfSd } from "@/lib/ui/brew/interval-of-sd";
import { fixedDigits } from "@/lib/ui/fixed-digits";
import type { LedgerGroup, LedgerRow } from "@/lib/ui/ledger-rows";
import { LedgerTable } from "@/lib/ui/ledger-table";
import { RECONCILED_COLUMNS } from "./comparison-columns";

interface ReconciledTableProps {
  readonly comparison: LedgerComparison;
  readonly preferences: Preferences;
  readonly onExplain: (rowId: string, columnId: string) => void;
}

/** What the balances make of all readings together, and how far each reading had to move for it. */
export function ReconciledTable({ comparison, preferences, onExplain }: ReconciledTableProps) {
  const read = comparison.reconciled.filter(({ measured }) => measured !== null);
  if (read.length === 0) return null;
  return (
    <section aria-labelledby="reconciled" className="mt-10">
      <h2 id="reconciled">What the readings come to together</h2>
      <p className="mt-1 mb-3 text-muted">
        Every balance closes with the reconciled values. “Moved by” counts the adjustment in its own standard
        uncertainties: chance alone moves nineteen of twenty readings by less than 2.
      </p>
      <LedgerTable
        caption="Readings, measured and reconciled"
        columns={RECONCILED_COLUMNS}
        groups={groupsOf(read)}
        preferences={preferences}
        onExplain={onExplain}
      />
    </section>
  );
}

function groupsOf(read: readonly ReconciledQuantity[]): readonly LedgerGroup[] {
  return STATIONS.map((station) => ({
    station,
    rows: read.filter(({ quantity }) => QUANTITIES[quantity].station === station).map(toRow),
  })).filter(({ rows }) => rows.length > 0);
}

function toRow({
  quantity,
  measured,
  measuredSd,
  reconciled,
  reconciledSd,
  z,
  isSuspect,
}: ReconciledQuantity): LedgerRow {
  const { label, dimension } = QUANTITIES[quantity];
  return {
    id: quantity,
    label,
    dimension,
    note: isSuspect ? "left out; reconciled from the others" : z === null ? "no other reading checks it" : undefined,
    cells: [
      { value: measured, interval: intervalOfSd(measured, measuredSd) },
      { value: reconciled, interval: intervalOfSd(reconciled, reconciledSd) },
      z === null
        ? { value: null, reason: "no balance checks it" }
        : { value: z, content: <span className="tabular-nums">{fixedDigits(z, 1)}</span> },
    ],
  };
}
