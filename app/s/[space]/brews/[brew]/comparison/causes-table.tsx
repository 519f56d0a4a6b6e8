import type { CauseId, QuantityCauses } from "@/lib/calc/compare";
import { Z80 } from "@/lib/calc/statistics";
import { causedNoun, causeLabel } from "@/lib/model/difference-sentence";
import type { Preferences } from "@/lib/model/preferences";
import { differenceAmount, type DifferenceAmount } from "@/lib/ui/brew/difference-amount";

interface CausesTableProps {
  readonly causes: readonly QuantityCauses[];
  readonly preferences: Preferences;
  readonly onExplain: (quantity: QuantityCauses["quantity"], cause: CauseId) => void;
}

/** The parts of each difference, station by station; each column adds up to measured less planned. */
export function CausesTable({ causes, preferences, onExplain }: CausesTableProps) {
  if (causes.length === 0) return null;
  const shown = causes.map((each): ShownCauses => ({ each, amount: differenceAmount(each, preferences) }));
  const ids = causes[0]?.parts.map(({ id }) => id) ?? [];
  return (
    <section aria-labelledby="causes" className="mt-10">
      <h2 id="causes">What made the difference</h2>
      <p className="mt-1 mb-3 text-muted">
        Each column adds up to measured less planned. ± is an 80 % interval; a part is named as a cause from twice its
        standard uncertainty on.
      </p>
      <table role="table" className="ledger" data-columns={causes.length > 3 ? "many" : causes.length}>
        <caption className="sr-only">Parts of the differences from the plan, by station</caption>
        <CausesHead shown={shown} />
        <tbody role="rowgroup">
          {ids.map((id, i) => (
            <Row
              key={id}
              label={causeLabel(id)}
              columns={shown.map(({ each, amount }) => {
                const { value, sd } = each.parts[i] ?? { value: 0, sd: 0 };
                return {
                  id: each.quantity,
                  amount,
                  value,
                  sd,
                  isNamed: each.named.some(({ ids: of }) => of.includes(id)),
                };
              })}
              onExplain={(quantity) => onExplain(quantity, id)}
            />
          ))}
          <Row
            label="The reading itself, against the others"
            columns={shown.map(({ each, amount }) => ({ id: each.quantity, amount, value: each.reading, sd: 0 }))}
          />
          <Row
            label="Measured less planned"
            isSum
            columns={shown.map(({ each, amount }) => ({ id: each.quantity, amount, value: each.difference, sd: 0 }))}
          />
        </tbody>
      </table>
    </section>
  );
}

interface ShownCauses {
  readonly each: QuantityCauses;
  readonly amount: DifferenceAmount;
}

function CausesHead({ shown }: { readonly shown: readonly ShownCauses[] }) {
  return (
    <thead role="rowgroup">
      <tr role="row">
        <th role="columnheader" scope="col">
          From
        </th>
        {shown.map(({ each, amount }) => (
          <th role="columnheader" scope="col" key={each.quantity}>
            {causedNoun(each.quantity)} <span className="font-normal">{amount.unit}</span>
          </th>
        ))}
      </tr>
    </thead>
  );
}

interface Column {
  readonly id: QuantityCauses["quantity"];
  readonly amount: DifferenceAmount;
  readonly value: number;
  readonly sd: number;
  readonly isNamed?: boolean;
}

interface RowProps {
  readonly label: string;
  readonly columns: readonly Column[];
  readonly isSum?: boolean;
  readonly onExplain?: (quantity: QuantityCauses["quantity"]) => void;
}

function Row({ label, columns, isSum, onExplain }: RowProps) {
  return (
    <tr role="row">
      <th role="rowheader" scope="row" className="align-top">
        {isSum === true ? <strong>{label}</strong> : label}
      </th>
      {columns.map(({ id, amount, value, sd, isNamed }) => {
        const spread = amount.signed(Z80 * sd).replace("+", "");
        const figure = (
          <>
            <span className="tabular-nums">
              {isNamed === true ? <strong>{amount.signed(value)}</strong> : amount.signed(value)}
            </span>
            {/[1-9]/.test(spread) ? <span className="block text-sm text-muted">± {spread}</span> : null}
          </>
        );
        return (
          <td role="cell" className="ledger-value align-top" key={id}>
            <span aria-hidden className="ledger-cell-label">
              {causedNoun(id)}, {amount.unit}
            </span>
            {onExplain === undefined ? (
              figure
            ) : (
              <button type="button" className="explained text-end" aria-haspopup="dialog" onClick={() => onExplain(id)}>
                <span className="sr-only">
                  {causedNoun(id)}, {label}:{" "}
                </span>
                {figure}
                <span className="sr-only">. Explain</span>
              </button>
            )}
          </td>
        );
      })}
    </tr>
  );
}
